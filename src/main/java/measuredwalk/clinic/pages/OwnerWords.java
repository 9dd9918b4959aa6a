package measuredwalk.clinic.pages;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Objects;
import java.util.Properties;

import measuredwalk.household.Dog;
import org.springframework.core.io.ClassPathResource;
import org.springframework.core.io.support.EncodedResource;
import org.springframework.core.io.support.PropertiesLoaderUtils;
import org.springframework.stereotype.Component;

/** What owners read because of something that the clinic did. */
@Component
class OwnerWords {

	private static final String FILE = "measuredwalk/clinic/owner-words.properties";

	private final String planChanged;

	OwnerWords() {
		try {
			Properties words = PropertiesLoaderUtils
				.loadProperties(new EncodedResource(new ClassPathResource(FILE), "UTF-8"));
			this.planChanged = Objects.requireNonNull(words.getProperty("plan-changed"),
					FILE + " must have the words 'plan-changed'");
		}
		catch (IOException ex) {
			throw new UncheckedIOException("The file " + FILE + " cannot be read.", ex);
		}
	}

	String planChanged(Dog dog) {
		int walks = dog.plan().walksPerDay();
		return this.planChanged.replace("{dog}", dog.name())
			.replace("{walks}", (walks == 1) ? "1 walk" : walks + " walks")
			.replace("{minutes}", Wording.figure(dog.plan().planMinutes()))
			.replace("{most}", Wording.figure(dog.plan().maxMinutes()));
	}

}
