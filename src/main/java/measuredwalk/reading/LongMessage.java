package measuredwalk.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;

import measuredwalk.signs.Sign;
import org.jspecify.annotations.Nullable;

/**
 * Reads a very long message part by part, so that the time it takes grows only in step
 * with its length.
 */
final class LongMessage {

	/** No phone keyboard's message is longer; a part ends at the last blank before it. */
	private static final int LONGEST_PART = 2000;

	private LongMessage() {
	}

	static List<OwnerMessage> parts(OwnerMessage message) {
		String text = message.text();
		if (text.length() <= LONGEST_PART) {
			return List.of(message);
		}
		List<OwnerMessage> parts = new ArrayList<>();
		int from = 0;
		while (from < text.length()) {
			int to = end(text, from);
			parts.add(message.withText(text.substring(from, to)));
			from = to;
		}
		return parts;
	}

	private static int end(String text, int from) {
		int limit = Math.min(text.length(), from + LONGEST_PART);
		if (limit == text.length()) {
			return limit;
		}
		int blank = text.lastIndexOf(' ', limit);
		return (blank > from) ? blank : Character.isLowSurrogate(text.charAt(limit)) ? limit - 1 : limit;
	}

	static Reading joined(List<Reading> parts) {
		Map<String, Sign> signs = new LinkedHashMap<>();
		parts.stream()
			.flatMap((part) -> part.signs().stream())
			.forEach((sign) -> signs.putIfAbsent(sign.kind().code() + sign.present(), sign));
		Reading worst = parts.stream().max(Comparator.comparing(Reading::level)).orElseThrow();
		return new Reading(parts.stream().flatMap((part) -> part.walks().stream()).toList(),
				List.copyOf(signs.values()), first(parts, Reading::stiffMinutes), first(parts, Reading::overall),
				worst.level(), worst.levelReasons(), parts.stream().anyMatch(Reading::understood), List.of(), null,
				null, null, parts.stream().allMatch(Reading::noWalk), loads(parts));
	}

	private static List<LoadTold> loads(List<Reading> parts) {
		List<LoadTold> loads = new ArrayList<>();
		int walks = 0;
		for (Reading part : parts) {
			for (LoadTold load : part.loads()) {
				loads.add(load.behind(walks));
			}
			walks += part.walks().size();
		}
		return loads;
	}

	private static <T> @Nullable T first(List<Reading> parts, Function<Reading, @Nullable T> field) {
		return parts.stream().map(field).filter(Objects::nonNull).findFirst().orElse(null);
	}

}
