/** How hard it is to drag a sinker over the bed. */

/** Coulomb coefficient between a sinker and the bed, friction over reaction. An assumption: no published value for a fly on stones stands behind it. */
export const bedFriction = 0.5;
