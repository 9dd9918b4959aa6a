package measuredwalk.browser;

import java.util.Arrays;
import java.util.Locale;

/** The people of the invented household; public for the page template only. */
public enum RehearsalPerson {

	WREN("Wren"), ALDER("Alder"),

	/** Somebody who has not joined yet. */
	NEWCOMER("Newcomer");

	private final String shownName;

	RehearsalPerson(String shownName) {
		this.shownName = shownName;
	}

	/**
	 * What the person is called.
	 * @return the name
	 */
	public String shownName() {
		return this.shownName;
	}

	/**
	 * The person's chat on the browser channel, and the name in the page's address.
	 * @return a lower-case word
	 */
	public String address() {
		return name().toLowerCase(Locale.ROOT);
	}

	/** An unknown name is the first person: a mistyped address still shows a chat. */
	static RehearsalPerson at(String address) {
		return Arrays.stream(values()).filter((person) -> person.address().equals(address)).findFirst().orElse(WREN);
	}

}
