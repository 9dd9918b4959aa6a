/** Who shares a dog's log, the dog, the clinic's plan for it and its medicines. */
@org.springframework.modulith.ApplicationModule(allowedDependencies = { "speech" })
@org.jspecify.annotations.NullMarked
package measuredwalk.household;
