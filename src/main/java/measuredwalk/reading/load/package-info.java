/**
 * What made a walk harder than usual: hills, stairs, soft ground, pace, play, heat. Its
 * cue words are a list of their own, so that they change nothing else that is read.
 */
@org.jspecify.annotations.NullMarked
package measuredwalk.reading.load;
