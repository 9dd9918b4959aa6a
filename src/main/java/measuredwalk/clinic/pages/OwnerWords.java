package measuredwalk.clinic.pages;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.text.MessageFormat;
import java.util.Objects;
import java.util.Properties;

import measuredwalk.household.Dog;
import measuredwalk.speech.Speech;
import org.springframework.core.io.ClassPathResource;
import org.springframework.core.io.support.EncodedResource;
import org.springframework.core.io.support.PropertiesLoaderUtils;
import org.springframework.stereotype.Component;

/** What owners read because of something that the clinic did. */
@Component
class OwnerWords {

	private static final String FILE = "measuredwalk/clinic/owner-words.properties";

	private final Properties words;

	OwnerWords() {
		try {
			this.words = PropertiesLoaderUtils
				.loadProperties(new EncodedResource(new ClassPathResource(FILE), "UTF-8"));
		}
		catch (IOException ex) {
			throw new UncheckedIOException("The file " + FILE + " cannot be read.", ex);
		}
		word("plan-changed", Speech.usual());
		word("walks", Speech.usual());
	}

	String planChanged(Dog dog) {
		Speech speech = dog.household().speech();
		String walks = new MessageFormat(word("walks", speech), speech.locale())
			.format(new Object[] { dog.plan().walksPerDay() });
		return word("plan-changed", speech).replace("{dog}", dog.name())
			.replace("{walks}", walks)
			.replace("{minutes}", Wording.figure(dog.plan().planMinutes()))
			.replace("{most}", Wording.figure(dog.plan().maxMinutes()));
	}

	/** In the household's language if the file has that, otherwise in English. */
	private String word(String name, Speech speech) {
		String usual = Objects.requireNonNull(this.words.getProperty(name),
				FILE + " must have the words '" + name + "'");
		return this.words.getProperty(name + "." + speech.language(), usual);
	}

}
