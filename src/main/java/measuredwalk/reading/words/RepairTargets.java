package measuredwalk.reading.words;

import java.util.Set;

/**
 * Everyday words that unknown words may be repaired to, beside those of the lexicon, so
 * that the small words around a sign are read right too.
 */
final class RepairTargets {

	private static final Set<String> WORDS = Set.of("the", "and", "with", "this", "that", "than", "then", "when", "was",
			"were", "not", "very", "about", "after", "before", "because", "back", "front", "left", "right", "home",
			"walk", "walked", "walking", "minutes", "minute", "mins", "hours", "hour", "quarter", "half", "twenty",
			"thirty", "forty", "fifty", "fifteen", "eighteen", "yesterday", "today", "morning", "evening", "night",
			"tonight", "usual", "normal", "metres", "miles", "yards", "round", "better", "worse", "quite", "really",
			"little", "slightly", "severe", "again", "still", "just", "started", "stopped", "once", "good", "fine",
			"okay", "lovely", "happy", "park", "field", "beach", "garden", "kitchen", "some", "same", "going", "would",
			"could", "should", "they", "there", "their", "have", "from", "until", "always", "never", "whole", "nothing",
			"anything", "something", "coming", "bed", "sofa", "stairs", "floor", "working", "sorry", "late", "reply",
			"off", "been", "what", "which", "where", "while", "other", "another", "few", "far", "long", "short", "gave",
			"didnt", "doesnt", "wasnt", "isnt", "hasnt", "couldnt", "wouldnt", "wont", "cant", "dont", "tablets",
			"altogether", "together");

	private RepairTargets() {
	}

	static Set<String> standard() {
		return WORDS;
	}

}
