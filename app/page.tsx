import { headers } from 'next/headers';
import { ExampleHead, SentBand } from '@/app/_firstScreen/ExampleHead';
import { HideStranger } from '@/app/_firstScreen/HideStranger';
import { sentHead } from '@/app/_firstScreen/sentHead';
import { FrontDoor } from '@/app/_jobs/FrontDoor';

export default async function Page() {
  const head = sentHead((await headers()).get('accept-language'));
  if (head === null) return <FrontDoor band={null} sent={null} />;
  return (
    <>
      <HideStranger language={head.language} />
      <FrontDoor band={<SentBand />} sent={<ExampleHead {...head} />} />
    </>
  );
}
