/** How each dog stands today, kept so that the first page is quick. */
@org.jspecify.annotations.NullMarked
package measuredwalk.clinic.caseload;
