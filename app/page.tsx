import { FrontDoor } from '@/app/_jobs/FrontDoor';

export default function Page() {
  return <FrontDoor />;
}
