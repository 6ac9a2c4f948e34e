import type { Metadata } from 'next';
import { connection } from 'next/server';
import type { ReactNode } from 'react';

export const metadata: Metadata = { title: 'Pressminute' };

export default async function RootLayout({ children }: Readonly<{ children: ReactNode }>) {
  // A page built in advance could not carry the nonce of its request, and its scripts would be refused.
  await connection();
  return (
    <html lang="en">
      <body>{children}</body>
    </html>
  );
}
