package measuredwalk.clinic.api;

import java.security.Principal;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import measuredwalk.telegram.JoinLinks;
import measuredwalk.clinic.access.AccessRecord;
import measuredwalk.clinic.access.Recorded;
import measuredwalk.clinic.caseload.Caseload;
import measuredwalk.conversations.Tongues;
import measuredwalk.household.Dog;
import measuredwalk.household.Enrolment;
import measuredwalk.household.Households;
import measuredwalk.journal.Attachments;
import measuredwalk.journal.Journal;
import measuredwalk.journal.Notes;
import measuredwalk.messaging.Chats;
import measuredwalk.prompts.Prompts;
import measuredwalk.speech.Speech;
import measuredwalk.suggestions.Suggestions;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PatchMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;

/** Dogs, for the clinic's own systems. */
@RestController
@RequestMapping("/api/dogs")
class DogApi {

	private final Households households;

	private final Journal journal;

	private final Notes notes;

	private final Suggestions suggestions;

	private final Chats chats;

	private final Everything everything;

	private final JoinLinks links;

	private final Caseload caseload;

	private final AccessRecord record;

	private final Prompts prompts;

	private final Attachments attachments;

	private final Tongues tongues;

	DogApi(Households households, Journal journal, Notes notes, Suggestions suggestions, Chats chats,
			Everything everything, JoinLinks links, Caseload caseload, AccessRecord record, Prompts prompts,
			Attachments attachments, Tongues tongues) {
		this.tongues = tongues;
		this.attachments = attachments;
		this.prompts = prompts;
		this.links = links;
		this.caseload = caseload;
		this.record = record;
		this.households = households;
		this.journal = journal;
		this.notes = notes;
		this.suggestions = suggestions;
		this.chats = chats;
		this.everything = everything;
	}

	@PostMapping
	@ResponseStatus(HttpStatus.CREATED)
	Enrolled enrol(@RequestBody DogRequest request, Principal staff) {
		request.speech(this.tongues, Speech.usual());
		Enrolment enrolment = enrolled(request, staff.getName());
		speak(enrolment.dog(), request);
		this.record.add(staff.getName(), "took on a dog", enrolment.dog().id().toString());
		this.caseload.lookAt(enrolment.dog().id());
		return new Enrolled(enrolment.dog().id(), enrolment.joinCode(),
				this.links.to(enrolment.joinCode()).orElse(null), enrolment.dog().household().id());
	}

	/** With a household named, the dog shares its people and their log. */
	private Enrolment enrolled(DogRequest request, String staff) {
		UUID household = request.householdId();
		if (household == null) {
			return this.households.enrol(request.newDog(), staff);
		}
		Enrolment enrolment = this.households.enrolInto(request.newDog(), household, staff)
			.orElseThrow(() -> new BadRequest("There is no household " + household + "; see a dog's householdId."));
		if (!this.households.carersOf(household).isEmpty()) {
			this.prompts.expect(enrolment.dog());
		}
		return enrolment;
	}

	@GetMapping
	@Recorded("saw the list of dogs")
	ResponseEntity<List<DogView>> list(Page page) {
		return page.of(this.households.dogs().stream().map(DogView::of).toList());
	}

	@GetMapping("/{id}")
	@Recorded("saw a dog")
	ResponseEntity<DogView> one(@PathVariable UUID id) {
		return marked(dog(id));
	}

	/**
	 * Changes plan or medicines. With {@code If-Match} only while the dog is as it was
	 * when that ETag was given.
	 */
	@PatchMapping("/{id}")
	@Recorded("changed plan or medicines")
	ResponseEntity<DogView> change(@PathVariable UUID id, @RequestBody DogRequest request,
			@RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String seen, Principal staff) {
		Dog changed = this.households
			.changeAsSeen(id, (dog) -> Mark.matches(seen, dog), request.change(), staff.getName())
			.orElseThrow(() -> new NotFound("dog", id));
		this.caseload.lookAt(id);
		return marked(speak(changed, request) ? dog(id) : changed);
	}

	private boolean speak(Dog dog, DogRequest request) {
		Optional<Speech> speech = request.speech(this.tongues, dog.household().speech());
		speech.ifPresent((chosen) -> this.households.speak(dog.household().id(), chosen));
		return speech.isPresent();
	}

	private static ResponseEntity<DogView> marked(Dog dog) {
		return ResponseEntity.ok().eTag(Mark.of(dog)).body(DogView.of(dog));
	}

	@DeleteMapping("/{id}")
	@ResponseStatus(HttpStatus.NO_CONTENT)
	@Transactional
	@Recorded("erased a dog")
	public void erase(@PathVariable UUID id) {
		this.chats.forget(this.households.erase(id).orElseThrow(() -> new NotFound("dog", id)));
	}

	@GetMapping("/{id}/journal")
	@Recorded("saw a dog's journal")
	JournalView journal(@PathVariable UUID id, @RequestParam(defaultValue = "false") boolean history) {
		dog(id);
		return JournalView.of(history ? this.journal.walkHistory(id) : this.journal.walks(id),
				history ? this.journal.morningHistory(id) : this.journal.mornings(id),
				this.households.medicationsOf(id), this.notes.of(id), this.attachments.of(id));
	}

	@GetMapping("/{id}/suggestion")
	@Recorded("saw a dog's suggestion")
	SuggestionView suggestion(@PathVariable UUID id) {
		return SuggestionView.of(id, this.suggestions.today(dog(id)));
	}

	@GetMapping("/{id}/export")
	@Recorded("took along all that is held of a dog")
	Everything.Export export(@PathVariable UUID id) {
		return this.everything.of(dog(id));
	}

	private Dog dog(UUID id) {
		return this.households.dog(id).orElseThrow(() -> new NotFound("dog", id));
	}

	record Enrolled(UUID id, String joinCode, @Nullable String joinLink, UUID householdId) {
	}

}
