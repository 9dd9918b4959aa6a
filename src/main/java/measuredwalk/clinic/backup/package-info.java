/** Copies of the embedded database, taken while the program runs. */
@org.jspecify.annotations.NullMarked
package measuredwalk.clinic.backup;
