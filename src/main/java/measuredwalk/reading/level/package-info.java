/** How soon somebody must act on a message: rules as named values in one list. */
@org.jspecify.annotations.NullMarked
package measuredwalk.reading.level;
