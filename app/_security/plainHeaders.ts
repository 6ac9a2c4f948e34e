/** Sent with every answer, whether page, script, picture or API: none of them depends on the request. */
export const plainHeaders = [
  { key: 'X-Content-Type-Options', value: 'nosniff' },
  { key: 'X-Frame-Options', value: 'DENY' },
  { key: 'Referrer-Policy', value: 'no-referrer' },
  // Only names that browsers know: an unknown one is a warning on the console of every visitor.
  {
    key: 'Permissions-Policy',
    value: [
      'camera',
      'microphone',
      'geolocation',
      'payment',
      'usb',
      'serial',
      'midi',
      'display-capture',
      'accelerometer',
      'gyroscope',
      'magnetometer',
    ]
      .map((feature) => `${feature}=()`)
      .join(', '),
  },
  { key: 'Cross-Origin-Opener-Policy', value: 'same-origin' },
  { key: 'Cross-Origin-Resource-Policy', value: 'same-origin' },
] as const;
