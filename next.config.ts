import type { NextConfig } from 'next';
import { dataPolicy, filePolicy, serviceWorkerPolicy } from './app/_security/contentPolicy';
import { plainHeaders } from './app/_security/plainHeaders';

const config: NextConfig = {
  poweredByHeader: false,
  reactStrictMode: true,
  // The development server would otherwise write a file of its own into the repository's top level.
  agentRules: false,
  // On a first visit, before the service worker keeps the pages, one that cannot be fetched is waited for: otherwise any
  // link would leave the app for the browser's error page.
  experimental: { useOffline: true },
  // It brings a program of its own, which the bundler cannot take in; only the build runs it.
  serverExternalPackages: ['esbuild'],
  // Named, because a lockfile in a folder above would otherwise be taken for the root.
  turbopack: { root: import.meta.dirname },
  async headers() {
    return [
      { source: '/:path*', headers: [...plainHeaders] },
      { source: '/_next/static/:path*', headers: [{ key: 'Content-Security-Policy', value: filePolicy }] },
      { source: '/api/:path*', headers: [{ key: 'Content-Security-Policy', value: dataPolicy }] },
      {
        source: '/sw.js',
        headers: [
          { key: 'Content-Security-Policy', value: serviceWorkerPolicy },
          // Kept by nobody on the way: it is by this file that a device learns of a newer version.
          { key: 'Cache-Control', value: 'no-cache' },
        ],
      },
    ];
  },
};

export default config;
