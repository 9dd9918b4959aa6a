package measuredwalk.tolerance.simulation;

/**
 * One owner.
 *
 * @param kind what kind of owner
 * @param seeing what is noticed
 * @param keeping how suggestions are kept to
 * @param telling how it is told
 * @param silence which check-ins are not answered
 */
record Owner(OwnerKind kind, Seeing seeing, Keeping keeping, Telling telling, Silence silence) {
}
