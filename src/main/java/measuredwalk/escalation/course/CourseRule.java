package measuredwalk.escalation.course;

import java.util.Optional;
import java.util.function.Function;

/**
 * A rule about a dog's course over days; each raises a review by the clinic.
 *
 * @param name a stable name, lower-case words joined by hyphens
 * @param source where it comes from
 * @param grade how well founded it is
 * @param worseningStep how much worse its measure must become to raise it again
 * @param finds what it finds in a course
 */
public record CourseRule(String name, String source, Grade grade, double worseningStep,
		Function<DogCourse, Optional<Finding>> finds) {
}
