/** Copies of the database, taken while the program runs, and the way back. */
@org.jspecify.annotations.NullMarked
package measuredwalk.clinic.backup;
