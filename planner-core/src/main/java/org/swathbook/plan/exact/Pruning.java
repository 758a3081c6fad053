package org.swathbook.plan.exact;

/** Ways in which the exact search leaves programs out unseen; none changes what it finds. */
public enum Pruning {
  /** What later passes save at most cannot make up for what they cost. */
  GAIN,
  /** Even without any loss the passes cost too much. */
  COST,
  /** The first passes break a house rule that later ones cannot mend. */
  HOUSE_RULES,
  /** The first passes break a cap, a count or an interval. */
  SEQUENCE,
  /** However well later passes work, the driver weeds are not held as well as is asked. */
  CONTROL
}
