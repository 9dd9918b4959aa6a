/**
 * Dogs and households that walk by a policy's suggestions, drawn from other laws than the
 * model's own, and the figures by which policies are compared. Developers run it as
 * {@code docs/simulator.md} says.
 */
@org.jspecify.annotations.NullMarked
package measuredwalk.tolerance.simulation;
