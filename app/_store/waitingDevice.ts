/** Stands for this device on what waits before it has counted anything; no device is called so. */
export const WAITING_DEVICE = 'thisdevice';

/** What the id of an entry begins with while it waits; it gets its own once it is written. */
export const WAITING_ID = 'waiting-';
