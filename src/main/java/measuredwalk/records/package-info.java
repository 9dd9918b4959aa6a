/**
 * A dog's record, for its people to see and to take along: the picture of a fortnight, a
 * table and pages to print.
 */
@org.springframework.modulith.ApplicationModule(allowedDependencies = { "household", "journal", "suggestions",
		"tolerance", "signs", "messaging", "pictures", "files", "speech" })
@org.jspecify.annotations.NullMarked
package measuredwalk.records;
