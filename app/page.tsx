export default function Page() {
  return <main>Pressminute</main>;
}
