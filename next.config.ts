import type { NextConfig } from 'next';
import { dataPolicy, filePolicy } from './app/_security/contentPolicy';
import { plainHeaders } from './app/_security/plainHeaders';

const config: NextConfig = {
  poweredByHeader: false,
  reactStrictMode: true,
  // The development server would otherwise write a file of its own into the repository's top level.
  agentRules: false,
  // A page that cannot be fetched is waited for: otherwise any link would leave the app for the browser's error page.
  experimental: { useOffline: true },
  // Named, because a lockfile in a folder above would otherwise be taken for the root.
  turbopack: { root: import.meta.dirname },
  async headers() {
    return [
      { source: '/:path*', headers: [...plainHeaders] },
      { source: '/_next/static/:path*', headers: [{ key: 'Content-Security-Policy', value: filePolicy }] },
      { source: '/api/:path*', headers: [{ key: 'Content-Security-Policy', value: dataPolicy }] },
    ];
  },
};

export default config;
