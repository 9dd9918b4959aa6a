package measuredwalk.journal;

import java.util.List;
import java.util.UUID;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Pictures, films and files of dogs. Nothing is worked out from them. */
@Service
@Transactional
public class Attachments {

	private final AttachmentRows rows;

	Attachments(AttachmentRows rows) {
		this.rows = rows;
	}

	/**
	 * Keeps one.
	 * @param dogId the dog
	 * @param attached what was sent
	 */
	public void keep(UUID dogId, Attached attached) {
		this.rows.save(new AttachmentEntity(dogId, attached));
	}

	/**
	 * All that were sent of a dog, the first one first.
	 * @param dogId the dog
	 * @return all of them
	 */
	@Transactional(readOnly = true)
	public List<Attached> of(UUID dogId) {
		return this.rows.findByDogIdOrderById(dogId).stream().map(AttachmentEntity::view).toList();
	}

}
