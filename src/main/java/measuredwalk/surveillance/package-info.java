/**
 * Sequential surveillance: the cumulative-sum chart and how long it runs until it alarms,
 * rightly or falsely. It knows nothing of dogs.
 */
@org.springframework.modulith.ApplicationModule(allowedDependencies = {})
@org.jspecify.annotations.NullMarked
package measuredwalk.surveillance;
