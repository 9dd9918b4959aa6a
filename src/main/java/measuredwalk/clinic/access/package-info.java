/** Who of the staff may do what, how they log in, and the record of what they did. */
@org.jspecify.annotations.NullMarked
package measuredwalk.clinic.access;
