package measuredwalk.household;

/**
 * A dog that was taken on, and the code by which its people join.
 *
 * @param dog the dog
 * @param joinCode the code to send after {@code /start}
 */
public record Enrolment(Dog dog, String joinCode) {
}
