/** What a dog's course over days says, beyond any single message. */
@org.jspecify.annotations.NullMarked
package measuredwalk.escalation.course;
