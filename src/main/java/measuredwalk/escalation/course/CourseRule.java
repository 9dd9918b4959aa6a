package measuredwalk.escalation.course;

import java.util.Optional;
import java.util.function.Function;

import measuredwalk.signs.Basis;

/**
 * A rule about a dog's course over days; each raises a review by the clinic.
 *
 * @param name a stable name, lower-case words joined by hyphens
 * @param fits when it fits, in words
 * @param basis what it rests on
 * @param worseningStep how much worse its measure must become to raise it again
 * @param finds what it finds in a course
 */
public record CourseRule(String name, String fits, Basis basis, double worseningStep,
		Function<DogCourse, Optional<Finding>> finds) {
}
