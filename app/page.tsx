import { FrontDoor } from './_jobs/FrontDoor';

export default function Page() {
  return <FrontDoor />;
}
