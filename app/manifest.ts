import type { MetadataRoute } from 'next';

/** What a phone or desktop reads when the app is put on its home screen. */
export default function manifest(): MetadataRoute.Manifest {
  return {
    id: '/',
    name: 'Pressminute',
    short_name: 'Pressminute',
    description: 'Checks, costs and prices dye-sublimation jobs: shirts, mugs, totes and panels.',
    start_url: '/',
    scope: '/',
    display: 'standalone',
    background_color: '#f7f3ea',
    theme_color: '#f7f3ea',
    icons: [
      { src: '/icons/mark-192.png', sizes: '192x192', type: 'image/png' },
      { src: '/icons/mark-512.png', sizes: '512x512', type: 'image/png' },
      { src: '/icons/mark-maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
    ],
    shortcuts: [
      { name: 'Jobs', url: '/jobs' },
      { name: 'Price lists', url: '/price-lists' },
    ],
  };
}
