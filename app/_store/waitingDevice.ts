/** Stands for this device on what waits before it has counted anything; no device is called so. */
export const WAITING_DEVICE = 'thisdevice';
