/** How alerts reach the clinic, and how the owner hears that they did. */
@org.jspecify.annotations.NullMarked
package measuredwalk.escalation.delivery;
