/** Copies of the database, taken while the program runs, and the way back. */
@org.springframework.modulith.NamedInterface("backup")
@org.jspecify.annotations.NullMarked
package measuredwalk.clinic.backup;
