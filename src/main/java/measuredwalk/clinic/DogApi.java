package measuredwalk.clinic;

import java.security.Principal;
import java.util.List;
import java.util.UUID;

import measuredwalk.household.Dog;
import measuredwalk.household.Enrolment;
import measuredwalk.household.Households;
import measuredwalk.journal.Journal;
import measuredwalk.messaging.Chats;
import measuredwalk.suggestions.Suggestions;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PatchMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
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

	private final Suggestions suggestions;

	private final Chats chats;

	private final Everything everything;

	DogApi(Households households, Journal journal, Suggestions suggestions, Chats chats, Everything everything) {
		this.households = households;
		this.journal = journal;
		this.suggestions = suggestions;
		this.chats = chats;
		this.everything = everything;
	}

	@PostMapping
	@ResponseStatus(HttpStatus.CREATED)
	Enrolled enrol(@RequestBody DogRequest request, Principal staff) {
		Enrolment enrolment = this.households.enrol(request.newDog(), staff.getName());
		return new Enrolled(enrolment.dog().id(), enrolment.joinCode(), null);
	}

	@GetMapping
	List<DogView> list() {
		return this.households.dogs().stream().map(DogView::of).toList();
	}

	@GetMapping("/{id}")
	DogView one(@PathVariable UUID id) {
		return DogView.of(dog(id));
	}

	@PatchMapping("/{id}")
	DogView change(@PathVariable UUID id, @RequestBody DogRequest request, Principal staff) {
		return this.households.change(id, request.change(), staff.getName())
			.map(DogView::of)
			.orElseThrow(() -> new NotFound("dog", id));
	}

	@DeleteMapping("/{id}")
	@ResponseStatus(HttpStatus.NO_CONTENT)
	@Transactional
	public void erase(@PathVariable UUID id) {
		this.chats.forget(this.households.erase(id).orElseThrow(() -> new NotFound("dog", id)));
	}

	@GetMapping("/{id}/journal")
	JournalView journal(@PathVariable UUID id, @RequestParam(defaultValue = "false") boolean history) {
		dog(id);
		return JournalView.of(history ? this.journal.walkHistory(id) : this.journal.walks(id),
				history ? this.journal.morningHistory(id) : this.journal.mornings(id),
				this.households.medicationsOf(id));
	}

	@GetMapping("/{id}/suggestion")
	SuggestionView suggestion(@PathVariable UUID id) {
		return SuggestionView.of(id, this.suggestions.today(dog(id)));
	}

	@GetMapping("/{id}/export")
	Everything.Export export(@PathVariable UUID id) {
		return this.everything.of(dog(id));
	}

	private Dog dog(UUID id) {
		return this.households.dog(id).orElseThrow(() -> new NotFound("dog", id));
	}

	record Enrolled(UUID id, String joinCode, @Nullable String joinLink) {
	}

}
