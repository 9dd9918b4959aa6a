package measuredwalk.reading.level;

import java.util.Set;

import measuredwalk.reading.words.Words;
import org.jspecify.annotations.Nullable;

/**
 * The few words of plans and visits: 'we have visitors on Saturday and will walk longer'.
 * With nothing but these no trouble can be told, so that the second net, which goes by
 * likeness alone, is not asked. No word that denies, and none of a body, may be added.
 */
public final class WordsOfPlans {

	private static final Set<String> WORDS = Set.of("a", "about", "afternoon", "an", "and", "around", "at", "be", "big",
			"bigger", "coming", "day", "days", "evening", "family", "fancy", "for", "friday", "friends", "going",
			"guests", "have", "hike", "holiday", "holidays", "hope", "hoping", "hour", "hours", "i", "in", "is", "like",
			"long", "longer", "maybe", "min", "mins", "minutes", "monday", "morning", "more", "my", "next", "of", "on",
			"or", "our", "out", "over", "plan", "planned", "planning", "plans", "round", "saturday", "so", "sunday",
			"the", "then", "this", "thinking", "thursday", "to", "today", "together", "tomorrow", "tuesday", "us",
			"visitor", "visitors", "walk", "walking", "walks", "want", "we", "wednesday", "week", "weekend", "will",
			"with", "would");

	private WordsOfPlans() {
	}

	/**
	 * Whether a message has no other words.
	 * @param words the message
	 * @param dogName the dog's name, or null
	 * @return true when all are words of plans, numbers or the dog's name
	 */
	public static boolean only(Words words, @Nullable String dogName) {
		for (int at = 0; at < words.size(); at++) {
			String form = words.form(at);
			boolean known = WORDS.contains(form) || Character.isDigit(form.charAt(0)) || form.equalsIgnoreCase(dogName);
			if (!known) {
				return false;
			}
		}
		return words.size() > 0;
	}

}
