import { timeOf } from '@/tests/bench/measure';
import { BareEngine } from '@/tests/bench/yardsticks/bareEngine';

const asked = JSON.parse(process.argv[2] ?? '[]');
process.stdout.write(String(timeOf(() => new BareEngine(asked).refill())));
