/**
 * The arithmetic under the belief: a point-mass filter on an even grid, the normal curve,
 * and the rule that picks the largest dose with a small enough chance of trouble. Nothing
 * here knows of dogs, so that published examples run through the same code.
 */
@org.jspecify.annotations.NullMarked
package measuredwalk.tolerance.filter;
