package measuredwalk.pictures;

/**
 * A place on a picture, in units that are pixels at scale 1, from its top left corner.
 *
 * @param x to the right
 * @param y downwards
 */
record Spot(double x, double y) {
}
