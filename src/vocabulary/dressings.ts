/** Words for a wound, the seal over it and how a day begins: each a choice of the scenario, in the order in which it is offered. */
export const tissues = ["soft-tissue", "necrotic-soft-tissue", "open-abdomen", "exposed-organ"] as const;
export type Tissue = (typeof tissues)[number];

/** How much debris a wound sheds. */
export const sloughs = ["clean", "ordinary", "heavy"] as const;
export type Slough = (typeof sloughs)[number];

/** How hard the drape is to seal. */
export const difficulties = ["easy", "ordinary", "awkward"] as const;
export type Difficulty = (typeof difficulties)[number];

/** What a day begins with. */
export const beginnings = ["suction", "fill"] as const;
export type Beginning = (typeof beginnings)[number];
