import './globals.css';
import type { Metadata, Viewport } from 'next';
import { connection } from 'next/server';
import type { ReactNode } from 'react';
import { AppFrame } from '@/app/_frame/AppFrame';
import { fontClasses } from '@/app/_frame/fonts';

export const metadata: Metadata = {
  title: { default: 'Pressminute', template: '%s · Pressminute' },
  description: 'Checks, costs and prices dye-sublimation jobs: shirts, mugs, totes and panels.',
  applicationName: 'Pressminute',
  formatDetection: { telephone: false, date: false, email: false, address: false },
};

export const viewport: Viewport = {
  themeColor: [
    { media: '(prefers-color-scheme: light)', color: '#f7f3ea' },
    { media: '(prefers-color-scheme: dark)', color: '#171412' },
  ],
};

export default async function RootLayout({ children }: Readonly<{ children: ReactNode }>) {
  // A page built in advance could not carry the nonce of its request, and its scripts would be refused.
  await connection();
  return (
    // The script that runs before the first paint marks it.
    <html lang="en" className={fontClasses} suppressHydrationWarning>
      <body>
        <AppFrame>{children}</AppFrame>
      </body>
    </html>
  );
}
