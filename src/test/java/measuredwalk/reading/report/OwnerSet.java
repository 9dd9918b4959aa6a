package measuredwalk.reading.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

import measuredwalk.reading.MessageReader;
import measuredwalk.reading.score.Confusions.Counted;
import measuredwalk.reading.score.LabelledMessage;
import measuredwalk.reading.score.Scorecard;
import measuredwalk.reading.score.Scorecard.Field;

/**
 * A set of labelled messages of owners. Of an untouched one only counts and rates are
 * told, so that no rule can be written from its messages.
 *
 * @param title its name in the report
 * @param file JSON Lines; it may be absent
 * @param untouched whether its messages must stay unseen
 */
record OwnerSet(String title, Path file, boolean untouched) {

	private static final int WORST = 15;

	private static final Map<Field, String> NAMES = names();

	boolean isThere() {
		return Files.exists(this.file);
	}

	List<LabelledMessage> messages() {
		return isThere() ? LabelledMessage.read(this.file) : List.of();
	}

	Scorecard scored(MessageReader reader) {
		return Scorecard.of(reader, messages());
	}

	/** The section of this set. */
	List<String> section(MessageReader reader) {
		List<String> lines = new ArrayList<>(List.of("### " + this.title, ""));
		if (!isThere()) {
			lines.add("`" + fileName() + "` is not there; nothing was measured.");
			lines.add("");
			return lines;
		}
		Scorecard card = scored(reader);
		lines.add(messages().size() + " messages, `" + fileName() + "`.");
		lines.add("");
		lines.addAll(fields(card));
		lines.add("");
		if (!this.untouched) {
			lines.addAll(confusions(card));
		}
		return lines;
	}

	/** Lists each message with a fault, where they may be seen. */
	void writeFaults(MessageReader reader, Path folder) throws IOException {
		if (isThere() && !this.untouched) {
			Files.createDirectories(folder);
			Files.write(folder.resolve(fileName() + ".txt"), scored(reader).failures());
		}
	}

	private String fileName() {
		return String.valueOf(this.file.getFileName());
	}

	private static List<String> fields(Scorecard card) {
		List<String> columns = new ArrayList<>(List.of("field"));
		columns.addAll(MarkdownTable.RATES);
		List<String> lines = new ArrayList<>(List.of(MarkdownTable.head(columns)));
		NAMES.forEach((field, name) -> {
			List<String> cells = new ArrayList<>(List.of(name));
			cells.addAll(MarkdownTable.rates(card.tally(field)));
			lines.add(MarkdownTable.row(cells));
		});
		return lines;
	}

	private static List<String> confusions(Scorecard card) {
		List<Counted> worst = card.confusions().worst(WORST);
		if (worst.isEmpty()) {
			return List.of("No confusion at all.", "");
		}
		List<String> lines = new ArrayList<>(List.of("Worst confusions:", "",
				MarkdownTable.head(List.of("field", "the label says", "was read", "times"))));
		for (Counted counted : worst) {
			lines.add(MarkdownTable.row(List.of(name(counted.confusion().field()), counted.confusion().told(),
					counted.confusion().read(), String.valueOf(counted.times()))));
		}
		lines.add("");
		return lines;
	}

	static String name(Field field) {
		return NAMES.getOrDefault(field, field.name());
	}

	private static Map<Field, String> names() {
		Map<Field, String> names = new EnumMap<>(Field.class);
		names.put(Field.WALK_MINUTES, "minutes of all walks (within 1)");
		names.put(Field.FIRST_WALK_MINUTES, "minutes of the first walk (within 1)");
		names.put(Field.DISTANCE, "distance (within 2 %)");
		names.put(Field.START, "start of the walk");
		names.put(Field.RELATIVE, "amount against another walk");
		names.put(Field.SIGNS, "signs with presence");
		names.put(Field.DENIED_SIGNS, "denied signs");
		names.put(Field.SEVERITY, "severity");
		names.put(Field.SIDE, "side");
		names.put(Field.LIMB, "limb");
		names.put(Field.WHEN, "when");
		names.put(Field.ONSET, "onset minute (within 1)");
		names.put(Field.STIFF_MINUTES, "minutes of stiffness (within 1)");
		names.put(Field.OVERALL, "overall");
		names.put(Field.URGENT, "urgent (emergency or same day)");
		names.put(Field.NOT_UNDERSTOOD, "not understood");
		names.put(Field.LEVEL, "level, where labelled");
		return names;
	}

}
