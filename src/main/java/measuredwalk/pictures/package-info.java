/**
 * Pictures of a dog's days, as SVG and PNG, each with the same said in words. Pure: what
 * is to be shown is handed in.
 */
@org.springframework.modulith.ApplicationModule(allowedDependencies = {})
@org.jspecify.annotations.NullMarked
package measuredwalk.pictures;
