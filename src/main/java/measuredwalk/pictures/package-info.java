/**
 * Pictures of a dog's days, as SVG and PNG, each with the same said in words. Pure: what
 * is to be shown is handed in, and an owner's picture speaks as the household is spoken
 * to.
 */
@org.springframework.modulith.ApplicationModule(allowedDependencies = "speech")
@org.jspecify.annotations.NullMarked
package measuredwalk.pictures;
