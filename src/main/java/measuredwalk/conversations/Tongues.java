package measuredwalk.conversations;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;

import measuredwalk.speech.Speech;
import measuredwalk.speech.Units;

/** The languages of {@code languages.yaml}. */
public final class Tongues {

	static final String FILE = "languages.yaml";

	private final List<Tongue> all;

	private Tongues(List<Tongue> all) {
		this.all = List.copyOf(all);
	}

	/** A folder of one's own without this file speaks the usual English only. */
	static Tongues read(ConversationFiles files) {
		if (!files.has(FILE)) {
			Speech usual = Speech.usual();
			return new Tongues(
					List.of(new Tongue(usual.tag(), "English", null, null, null, usual.units(), List.of("english"))));
		}
		YamlMap file = files.file(FILE);
		List<YamlMap> maps = file.maps("languages");
		Tongues tongues = new Tongues(maps.stream().map(Tongues::tongue).toList());
		file.noOtherKeys();
		if (tongues.all.isEmpty() || !tongues.all.get(0).tag().equals(Speech.usual().tag())) {
			throw file.problemAt("languages", "the first language must be '" + Speech.usual().tag()
					+ "', which households have that chose none.");
		}
		return tongues;
	}

	private static Tongue tongue(YamlMap map) {
		Units units = Units.of(map.text("units"))
			.orElseThrow(() -> map.problemAt("units", "'units' must be km or miles."));
		Tongue tongue = new Tongue(map.text("language"), map.text("name"), map.optionalText("folder").orElse(null),
				map.optionalText("words").orElse(null), map.optionalText("vet").orElse(null), units,
				map.texts("called"));
		map.noOtherKeys();
		return tongue;
	}

	/**
	 * All of them.
	 * @return in the order of the file; the first is the usual one
	 */
	public List<Tongue> all() {
		return this.all;
	}

	/**
	 * The language of a tag.
	 * @param tag such as {@code es}
	 * @return the language, or empty
	 */
	public Optional<Tongue> of(String tag) {
		return first((tongue) -> tongue.tag().equalsIgnoreCase(tag));
	}

	/**
	 * The language that a chat program's language code means.
	 * @param code an IETF tag such as {@code es-MX}
	 * @return that very one, or else the first of that language, or empty
	 */
	public Optional<Tongue> meantBy(String code) {
		String language = Locale.forLanguageTag(code).getLanguage();
		return of(code).or(() -> first((tongue) -> Locale.forLanguageTag(tongue.tag()).getLanguage().equals(language)));
	}

	/**
	 * The language that somebody named in plain words or by its button.
	 * @param words what was written
	 * @return the language whose name is the longest among them, or empty
	 */
	public Optional<Tongue> named(String words) {
		String said = " " + words.strip().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L} ]", " ").replaceAll(" +", " ")
				+ " ";
		return this.all.stream()
			.filter((tongue) -> longest(tongue, said) > 0)
			.max(java.util.Comparator.comparingInt((tongue) -> longest(tongue, said)));
	}

	private static int longest(Tongue tongue, String said) {
		String name = tongue.name()
			.toLowerCase(Locale.ROOT)
			.replaceAll("[^\\p{L} ]", " ")
			.replaceAll(" +", " ")
			.strip();
		return java.util.stream.Stream.concat(tongue.called().stream(), java.util.stream.Stream.of(name))
			.filter((word) -> said.contains(" " + word + " "))
			.mapToInt(String::length)
			.max()
			.orElse(0);
	}

	private Optional<Tongue> first(Predicate<Tongue> wanted) {
		return this.all.stream().filter(wanted).findFirst();
	}

}
