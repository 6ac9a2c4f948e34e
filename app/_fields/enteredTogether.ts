'use client';

import { createContext } from 'react';

/** True inside a form whose fields are entered together: nothing that stands in one is in force before that. */
export const EnteredTogether = createContext(false);
