/**
 * In what context a phrase stands: denied, doubted, past, hypothetical, or of another.
 * The method is that of NegEx (Chapman 2001, J Biomed Inform 34:301) and ConText (Harkema
 * 2009, J Biomed Inform 42:839), with cues for the English of dog owners.
 */
@org.springframework.modulith.NamedInterface("context")
@org.jspecify.annotations.NullMarked
package measuredwalk.reading.context;
