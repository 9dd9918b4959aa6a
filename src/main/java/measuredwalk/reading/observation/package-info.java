/** Signs of the dog in a message: which, how bad, where, when, present or denied. */
@org.jspecify.annotations.NullMarked
package measuredwalk.reading.observation;
