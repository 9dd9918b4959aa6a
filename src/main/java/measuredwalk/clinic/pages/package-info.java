/** The clinic's pages. */
@org.jspecify.annotations.NullMarked
package measuredwalk.clinic.pages;
