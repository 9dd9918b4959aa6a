/**
 * Files for people: tables that are safe in a spreadsheet, and pages to print. Pure: what
 * is to stand in them is handed in.
 */
@org.springframework.modulith.ApplicationModule(allowedDependencies = "pictures")
@org.jspecify.annotations.NullMarked
package measuredwalk.files;
