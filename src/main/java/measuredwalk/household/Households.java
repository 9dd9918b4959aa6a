package measuredwalk.household;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Predicate;

import measuredwalk.speech.Speech;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Dogs, the people who look after them, plans and medicines. */
@Service
@Transactional
public class Households {

	private final HouseholdRows households;

	private final DogRows dogs;

	private final PlanRows plans;

	private final MedicationRows medications;

	private final CarerRows carers;

	private final JoinCodeRows codes;

	private final ApplicationEventPublisher events;

	private final Clock clock;

	private final ReadOnce<UUID, List<Plan>> plansRead = new ReadOnce<>();

	private final ReadOnce<UUID, List<Medication>> medicationsRead = new ReadOnce<>();

	Households(HouseholdRows households, DogRows dogs, PlanRows plans, MedicationRows medications, CarerRows carers,
			JoinCodeRows codes, ApplicationEventPublisher events, Clock clock) {
		this.events = events;
		this.households = households;
		this.dogs = dogs;
		this.plans = plans;
		this.medications = medications;
		this.carers = carers;
		this.codes = codes;
		this.clock = clock;
	}

	/**
	 * Takes a dog on, with a household of its own.
	 * @param newDog the dog
	 * @param by who does so
	 * @return the dog and a code for its people
	 * @throws Refused when a figure is out of range
	 */
	public Enrolment enrol(NewDog newDog, String by) {
		return enrol(newDog, this.households.save(new HouseholdEntity(newDog.timeZone(), this.clock.instant())), by);
	}

	/**
	 * Takes a dog on into a household that is known; its days are counted in that
	 * household's zone.
	 * @param newDog the dog
	 * @param householdId the household
	 * @param by who does so
	 * @return the dog and a code for more people, or empty when there is no such
	 * household
	 * @throws Refused when a figure is out of range
	 */
	public Optional<Enrolment> enrolInto(NewDog newDog, UUID householdId, String by) {
		Optional<Enrolment> enrolment = this.households.findById(householdId)
			.map((household) -> enrol(newDog, household, by));
		enrolment.ifPresent((each) -> this.events.publishEvent(new DogCameToHousehold(each.dog().id())));
		return enrolment;
	}

	private Enrolment enrol(NewDog newDog, HouseholdEntity household, String by) {
		Instant now = this.clock.instant();
		LocalDate today = now.atZone(household.view().timeZone()).toLocalDate();
		Plan plan = newDog.plan(today);
		DogEntity dog = this.dogs.save(new DogEntity(household, newDog, today, now));
		this.plans.save(new PlanEntity(dog.id(), plan, by, now));
		newDog.medications()
			.stream()
			.distinct()
			.forEach((kind) -> this.medications.save(new MedicationEntity(dog.id(), kind, today, true)));
		return new Enrolment(view(dog), shareCode(household.id(), by));
	}

	/**
	 * Changes a dog's plan or medicines from today on.
	 * @param dogId the dog
	 * @param change what changes
	 * @param by who changes it
	 * @return the dog as it is now, or empty when there is no such dog
	 * @throws Refused when a figure is out of range
	 */
	public Optional<Dog> change(UUID dogId, DogChange change, String by) {
		return this.dogs.findById(dogId).map((dog) -> {
			Dog before = view(dog);
			this.plansRead.forget(dogId);
			this.medicationsRead.forget(dogId);
			LocalDate today = this.clock.instant().atZone(before.household().timeZone()).toLocalDate();
			if (change.changesPlan()) {
				Plan plan = changed(before.plan(), change, today);
				this.plans.save(new PlanEntity(dogId, plan, by, this.clock.instant()));
			}
			List<String> kinds = change.medications();
			if (kinds != null) {
				setMedications(dogId, kinds, today);
			}
			return view(dog);
		});
	}

	/**
	 * Changes a dog's plan or medicines from today on, unless it has changed since it was
	 * looked at. Nobody else can change it in between.
	 * @param dogId the dog
	 * @param asSeen whether the dog is still as it was seen
	 * @param change what changes
	 * @param by who changes it
	 * @return the dog as it is now, or empty when there is no such dog
	 * @throws ChangedSince when it is not as it was seen
	 * @throws Refused when a figure is out of range
	 */
	public Optional<Dog> changeAsSeen(UUID dogId, Predicate<Dog> asSeen, DogChange change, String by) {
		Optional<Dog> present = this.dogs.findForChangeById(dogId).map(this::view);
		if (present.isPresent() && !asSeen.test(present.get())) {
			throw new ChangedSince();
		}
		return change(dogId, change, by);
	}

	/**
	 * Sets when a household wants to be asked.
	 * @param householdId the household
	 * @param hours its hours from now on
	 */
	public void keepHours(UUID householdId, Hours hours) {
		this.households.findById(householdId).ifPresent((household) -> household.keep(hours));
	}

	/**
	 * Sets how a household is spoken to.
	 * @param householdId the household
	 * @param speech its speech from now on
	 */
	public void speak(UUID householdId, Speech speech) {
		this.households.findById(householdId).ifPresent((household) -> household.speak(speech));
	}

	/**
	 * How the people of a chat are spoken to.
	 * @param chatId the chat
	 * @return the speech of the household that it joined last, or empty when it belongs
	 * to none
	 */
	@Transactional(readOnly = true)
	public Optional<Speech> speechIn(long chatId) {
		return carerIn(chatId).flatMap((carer) -> this.households.findById(carer.householdId()))
			.map((household) -> household.view().speech());
	}

	/**
	 * Sets when a dog walks, as its household says; it is not learned from then on.
	 * @param dogId the dog
	 * @param times the times, in the household's zone
	 */
	public void walksAt(UUID dogId, List<LocalTime> times) {
		this.dogs.findById(dogId).ifPresent((dog) -> dog.walksAt(times));
	}

	private static Plan changed(Plan plan, DogChange change, LocalDate today) {
		double minutes = Objects.requireNonNullElse(change.planMinutes(), plan.planMinutes());
		int walks = Objects.requireNonNullElse(change.walksPerDay(), plan.walksPerDay());
		double least = Objects.requireNonNullElse(change.minMinutes(), plan.minMinutes());
		double most = Objects.requireNonNullElse(change.maxMinutes(), plan.maxMinutes());
		return new Plan(today, minutes, walks, least, most);
	}

	private void setMedications(UUID dogId, List<String> kinds, LocalDate today) {
		List<MedicationEntity> given = this.medications.findByDogIdOrderById(dogId)
			.stream()
			.filter(MedicationEntity::given)
			.toList();
		given.stream().filter((each) -> !kinds.contains(each.kind())).forEach((each) -> each.stop(today));
		List<String> newKinds = new ArrayList<>(kinds);
		newKinds.removeAll(given.stream().map(MedicationEntity::kind).toList());
		newKinds.stream()
			.distinct()
			.forEach((kind) -> this.medications.save(new MedicationEntity(dogId, kind, today, false)));
	}

	/**
	 * All dogs, by name.
	 * @return the dogs
	 */
	@Transactional(readOnly = true)
	public List<Dog> dogs() {
		Map<UUID, Plan> latest = new HashMap<>();
		this.plans.findAllByOrderById().forEach((plan) -> latest.put(plan.dogId(), plan.view()));
		Map<UUID, List<String>> given = new HashMap<>();
		this.medications.findAllByOrderById()
			.stream()
			.filter(MedicationEntity::given)
			.forEach((each) -> given.computeIfAbsent(each.dogId(), (id) -> new ArrayList<>()).add(each.kind()));
		return this.dogs.findAllByOrderByNameAscIdAsc()
			.stream()
			.map((dog) -> dog.view(latest.get(dog.id()), given.getOrDefault(dog.id(), List.of())))
			.toList();
	}

	/**
	 * Finds a dog.
	 * @param id its number
	 * @return the dog, or empty
	 */
	@Transactional(readOnly = true)
	public Optional<Dog> dog(UUID id) {
		return this.dogs.findById(id).map(this::view);
	}

	/**
	 * The dogs of a household, by name.
	 * @param householdId the household
	 * @return the dogs, at least one
	 */
	@Transactional(readOnly = true)
	public List<Dog> dogsOf(UUID householdId) {
		return this.dogs.findByHouseholdIdOrderByNameAscIdAsc(householdId).stream().map(this::view).toList();
	}

	/**
	 * All plans that a dog ever had, the first one first.
	 * @param dogId the dog
	 * @return its plans
	 */
	@Transactional(readOnly = true)
	public List<Plan> plansOf(UUID dogId) {
		return this.plansRead.of(dogId,
				() -> this.plans.findByDogIdOrderById(dogId).stream().map(PlanEntity::view).toList());
	}

	/**
	 * All medicines that a dog gets or got, the first one first.
	 * @param dogId the dog
	 * @return its medicines
	 */
	@Transactional(readOnly = true)
	public List<Medication> medicationsOf(UUID dogId) {
		return this.medicationsRead.of(dogId,
				() -> this.medications.findByDogIdOrderById(dogId).stream().map(MedicationEntity::view).toList());
	}

	/**
	 * Makes a code by which another person can join.
	 * @param householdId the household
	 * @param by who makes it
	 * @return the code
	 */
	public String shareCode(UUID householdId, String by) {
		return this.codes.save(new JoinCodeEntity(SecretCode.make(), householdId, by, this.clock.instant())).code();
	}

	/**
	 * Joins a chat to the household that a code is for. A chat follows one household at a
	 * time: it leaves the one that it followed before, whose log stays.
	 * @param typedCode the code as it was typed
	 * @param chatId the chat
	 * @param name what the person is called
	 * @return what came of it
	 */
	public JoinOutcome join(String typedCode, long chatId, String name) {
		Instant now = this.clock.instant().truncatedTo(ChronoUnit.MILLIS);
		Optional<JoinCodeEntity> code = this.codes.findById(SecretCode.tidy(typedCode)).filter((each) -> !each.used());
		if (code.isEmpty()) {
			return JoinOutcome.UNKNOWN_CODE;
		}
		if (code.get().expired(now)) {
			return JoinOutcome.EXPIRED_CODE;
		}
		List<CarerEntity> present = this.carers.findByChatIdAndLeftAtIsNullOrderByJoinedAtDesc(chatId);
		UUID householdId = code.get().householdId();
		if (present.stream().anyMatch((carer) -> carer.householdId().equals(householdId))) {
			present.forEach(CarerEntity::speakAgain);
			return JoinOutcome.BACK_AGAIN;
		}
		present.forEach((carer) -> carer.leave(now));
		code.get().use(now);
		this.carers.save(new CarerEntity(code.get().householdId(), chatId, name, now));
		return JoinOutcome.JOINED;
	}

	/**
	 * The dogs that a chat followed until it joined the household that it follows now.
	 * @param chatId the chat
	 * @return those dogs
	 */
	@Transactional(readOnly = true)
	public List<Dog> dogsLeftFor(long chatId) {
		return leftByJoining(chatId).stream().flatMap((carer) -> dogsOf(carer.householdId()).stream()).toList();
	}

	/**
	 * Lets a chat follow again what it left by joining another household.
	 * @param chatId the chat
	 */
	public void stayAsWell(long chatId) {
		leftByJoining(chatId).forEach(CarerEntity::stay);
	}

	private List<CarerEntity> leftByJoining(long chatId) {
		return this.carers.findByChatIdAndLeftAtIsNullOrderByJoinedAtDesc(chatId)
			.stream()
			.findFirst()
			.map((present) -> this.carers.findByChatIdAndLeftAt(chatId, present.joinedAt()))
			.orElse(List.of());
	}

	/**
	 * Who writes in a chat.
	 * @param chatId the chat
	 * @return the carer, of the household that it joined last, or empty when the chat
	 * belongs to no household
	 */
	@Transactional(readOnly = true)
	public Optional<Carer> carerIn(long chatId) {
		return carersIn(chatId).stream().findFirst();
	}

	/**
	 * Who writes in a chat, once for each household that it follows.
	 * @param chatId the chat
	 * @return the carer, of the household that it joined last first
	 */
	@Transactional(readOnly = true)
	public List<Carer> carersIn(long chatId) {
		return this.carers.findByChatIdAndLeftAtIsNullOrderByJoinedAtDesc(chatId)
			.stream()
			.map(CarerEntity::view)
			.toList();
	}

	/**
	 * The people of a household, in the order in which they joined.
	 * @param householdId the household
	 * @return its carers
	 */
	@Transactional(readOnly = true)
	public List<Carer> carersOf(UUID householdId) {
		return this.carers.findByHouseholdIdAndLeftAtIsNullOrderByJoinedAt(householdId)
			.stream()
			.map(CarerEntity::view)
			.toList();
	}

	/**
	 * Ends all messages to a chat.
	 * @param chatId the chat
	 */
	public void silence(long chatId) {
		this.carers.findByChatIdAndLeftAtIsNullOrderByJoinedAtDesc(chatId)
			.forEach((carer) -> carer.silence(this.clock.instant()));
	}

	/**
	 * Lets messages go to a chat again.
	 * @param chatId the chat
	 */
	public void speakAgain(long chatId) {
		this.carers.findByChatIdAndLeftAtIsNullOrderByJoinedAtDesc(chatId).forEach(CarerEntity::speakAgain);
	}

	/**
	 * Ends what a carer shares. The log stays.
	 * @param carerId the carer
	 */
	public void leave(UUID carerId) {
		this.carers.findById(carerId).ifPresent((carer) -> carer.leave(this.clock.instant()));
	}

	/**
	 * Erases a dog and everything that hangs on it; with a household's last dog, the
	 * household and its carers too.
	 * @param dogId the dog
	 * @return the chats of carers who have no dog left, or empty when there is no such
	 * dog
	 */
	public Optional<List<Long>> erase(UUID dogId) {
		return this.dogs.findById(dogId).map((dog) -> {
			HouseholdEntity household = dog.household();
			this.dogs.delete(dog);
			this.dogs.flush();
			if (!this.dogs.findByHouseholdIdOrderByNameAscIdAsc(household.id()).isEmpty()) {
				return List.of();
			}
			List<Long> chats = carersOf(household.id()).stream()
				.map(Carer::chatId)
				.filter((chatId) -> carersIn(chatId).size() == 1)
				.toList();
			this.households.delete(household);
			return chats;
		});
	}

	private Dog view(DogEntity dog) {
		List<Plan> plansSoFar = plansOf(dog.id());
		List<String> given = medicationsOf(dog.id()).stream()
			.filter((each) -> each.stoppedOn() == null)
			.map(Medication::kind)
			.toList();
		return dog.view(plansSoFar.get(plansSoFar.size() - 1), given);
	}

}
