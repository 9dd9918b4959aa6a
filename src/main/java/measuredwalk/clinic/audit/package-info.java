/** How the whole caseload fares: figures for the clinic's own audit. */
@org.jspecify.annotations.NullMarked
package measuredwalk.clinic.audit;
