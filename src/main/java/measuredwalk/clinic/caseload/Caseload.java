package measuredwalk.clinic.caseload;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Service;

/**
 * How all dogs stand. It is worked out from journal and model when something was told or
 * a day begins, and can be thrown away at any time.
 */
@Service
public class Caseload {

	private static final Logger log = LoggerFactory.getLogger(Caseload.class);

	private final Standings standings;

	private final Set<UUID> news = ConcurrentHashMap.newKeySet();

	Caseload(Standings standings) {
		this.standings = standings;
	}

	/**
	 * How all dogs stand, with all that was told here.
	 * @return one for each dog that was looked at, the ones of most concern first
	 */
	public List<DogStanding> all() {
		lookAtNews();
		return this.standings.all();
	}

	/**
	 * Looks at a dog afresh.
	 * @param dogId the dog; nothing happens when there is no such dog
	 */
	public void lookAt(UUID dogId) {
		this.standings.lookAt(dogId);
	}

	/**
	 * Lets all dogs be looked at afresh in the next round. Until then the list shows how
	 * they stood.
	 */
	void outdate() {
		this.standings.outdate();
	}

	/**
	 * Notes that something was told of a dog, by which it is looked at in the next round,
	 * or sooner when the list is asked for. Whoever told does not wait for that, and many
	 * words in a short time are looked at together.
	 */
	void news(UUID dogId) {
		this.news.add(dogId);
	}

	void lookAtNews() {
		List.copyOf(this.news).stream().filter(this.news::remove).forEach(this::lookAtIfPossible);
	}

	/** What was told is safe already; a list that lags behind must not undo that. */
	void lookAtIfPossible(UUID dogId) {
		try {
			lookAt(dogId);
		}
		catch (RuntimeException ex) {
			log.warn("The standing of dog {} could not be brought up to date; it will be when its day begins.", dogId,
					ex);
		}
	}

}
