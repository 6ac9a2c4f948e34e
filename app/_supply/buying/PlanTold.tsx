'use client';

import { useEffect } from 'react';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { BuyingList } from '@/shared/schemas/making/supply';
import { type PlanOfList, useBuyingPlan } from './useBuyingPlan';

type PlanToldProps = Readonly<{
  workspace: ReadyWorkspace;
  list: BuyingList;
  onPlan: (plan: PlanOfList) => void;
}>;

/** Shows nothing: tells what is to be bought for a list, and how far that is worked out. */
export function PlanTold({ workspace, list, onPlan }: PlanToldProps) {
  const { plan, isWaiting, failure } = useBuyingPlan(workspace, list);
  useEffect(() => onPlan({ plan, isWaiting, failure }), [plan, isWaiting, failure, onPlan]);
  return null;
}
