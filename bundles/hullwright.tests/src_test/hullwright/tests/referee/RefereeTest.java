/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.referee;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.tests.referee.DescribedBoat.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

/**
 * The independent referee: ngspice, a general-purpose circuit simulator of Debian, computes the same random boats as our
 * program. A boat is made up from its seed as a description; a {@code .hull} text of it goes through parser, resolver and
 * analysis, a netlist of it through ngspice.
 */
class RefereeTest {

	private static final int BOATS = 1008;

	/** Below this, an error in a resistance is not one that matters: 20 % of it is a quarter of a millivolt. */
	private static final double WORTH_PLANTING = 1.25e-3;

	/** A contact without resistance, in ohms; ngspice takes 0 for something else. */
	private static final double NEXT_TO_NOTHING = 1e-6;

	private static List<Comparison> comparisons;

	@BeforeAll
	static void compare() {
		comparisons = Comparison.of(LongStream.range(0, BOATS).mapToObj(RandomBoat::of).toList());
	}

	@Test
	void everyShapeAndBehaviourHasItsShare() {
		Map<String, Integer> counts = new TreeMap<>();
		comparisons.forEach(comparison -> counts.merge(comparison.boat().shape() + " " + comparison.boat().behaviour(), 1, Integer::sum));
		Map<String, Integer> wanted = new TreeMap<>();
		for (Shape shape : Shape.values()) {
			for (LoadData.Behaviour behaviour : LoadData.Behaviour.values()) {
				wanted.put(shape + " " + behaviour, BOATS / 12);
			}
		}
		assertEquals(wanted, counts);
		assertTrue(comparisons.size() >= 1000);
	}

	@Test
	void boatsAreWhatTheirShapeSays() {
		assertEach(Shape.TREE, "one supply for each network and no loop", boat -> boat.networks().stream().allMatch(net -> Feeding.entries(net) == 1 && net.joins().isEmpty())
				&& Feeding.secondNegatives(boat) == 0 && Feeding.bridges(boat) == 0);
		assertEach(Shape.DOUBLY_FED, "two supplies on one unbroken conductor", boat -> Feeding.sections(boat.networks().get(0)) == 1 && Feeding.entries(boat.networks().get(0)) == 2);
		assertEach(Shape.SECTIONS, "several sections, each with a supply", boat -> Feeding.sections(boat.networks().get(0)) >= 2
				&& Feeding.entries(boat.networks().get(0)) >= Feeding.sections(boat.networks().get(0)));
		assertEach(Shape.MESHED, "a join, a second negative or a bridge", boat -> boat.networks().stream().anyMatch(net -> !net.joins().isEmpty())
				|| Feeding.secondNegatives(boat) > 0 || Feeding.bridges(boat) > 0);
	}

	private static void assertEach(Shape shape, String what, Predicate<DescribedBoat> is) {
		assertEquals(List.of(), comparisons.stream().map(Comparison::boat).filter(boat -> boat.shape() == shape && !is.test(boat)).toList(), what);
	}

	@Test
	void loadsBehaveAsTheirBoatSays() {
		for (LoadData.Behaviour behaviour : LoadData.Behaviour.values()) {
			List<DescribedBoat> boats = comparisons.stream().map(Comparison::boat).filter(boat -> boat.behaviour() == behaviour).toList();
			boats.forEach(boat -> {
				List<LoadData.Behaviour> loads = boat.devices().stream().flatMap(device -> device.kind().load().stream()).map(LoadData::behaviour).toList();
				assertTrue(loads.contains(behaviour), boat + " has " + loads);
				assertTrue(behaviour == LoadData.Behaviour.CONSTANT_POWER || loads.stream().allMatch(behaviour::equals), boat + " has " + loads);
			});
		}
	}

	@Test
	void bothAgreeOnEveryVoltageAndCurrent(TestReporter reporter) {
		Map<String, Double> largest = new TreeMap<>();
		int compared = 0;
		for (Comparison comparison : comparisons) {
			largest.merge(comparison.boat().shape() + " " + comparison.boat().behaviour(), comparison.largestDifference(), Math::max);
			compared += comparison.ngspice().size();
		}
		reporter.publishEntry(compared + " voltages and currents; largest differences " + largest);
		List<Comparison> differing = comparisons.stream().filter(comparison -> !comparison.agrees()).toList();
		assertTrue(differing.isEmpty(), () -> differing.size() + " boats differ. The first:\n" + differing.get(0).report());
	}

	@Test
	void anErrorOfAFifthInOneResistanceIsSeen() {
		// in a network: what a device draws from a supply of its own alone shows nowhere else
		assertPlantedErrorsAreSeen(element -> element.label().contains("."), element -> element.value() * 1.2);
	}

	@Test
	void aContactLeftOutIsSeen() {
		assertPlantedErrorsAreSeen(element -> element.label().contains("contact"), element -> NEXT_TO_NOTHING);
	}

	/** Plants one error in each of some boats of every kind, in a resistance in which enough voltage is lost. */
	private static void assertPlantedErrorsAreSeen(Predicate<Netlist.Element> where, ToDoubleFunction<Netlist.Element> wrong) {
		List<Comparison> sound = new ArrayList<>();
		List<Netlist> planted = new ArrayList<>();
		for (Comparison comparison : comparisons.subList(0, 120)) {
			List<Netlist.Element> candidates = comparison.netlist().lostMoreThan(WORTH_PLANTING, comparison.answer()).stream().filter(where).toList();
			if (!candidates.isEmpty()) {
				Netlist.Element element = candidates.get((int) (comparison.boat().seed() % candidates.size()));
				sound.add(comparison);
				planted.add(comparison.netlist().with(element.label(), wrong.applyAsDouble(element)));
			}
		}
		assertTrue(planted.size() >= 60, planted.size() + " boats have a place for an error");
		List<Map<String, Double>> answers = Ngspice.operatingPoints(planted.stream().map(Netlist::text).toList());
		for (int at = 0; at < planted.size(); at++) {
			Comparison comparison = sound.get(at).with(planted.get(at), answers.get(at));
			assertTrue(!comparison.agrees(), () -> "the error was not seen: " + comparison.boat() + "\n" + comparison.netlist().text());
		}
	}

	@Test
	void theSameSeedGivesTheSameBoat() {
		for (long seed = 0; seed < 12; seed++) {
			assertEquals(HullText.of(RandomBoat.of(seed)), HullText.of(RandomBoat.of(seed)));
			assertEquals(BoatNetlist.of(RandomBoat.of(seed)).text(), BoatNetlist.of(RandomBoat.of(seed)).text());
		}
	}

	@Test
	void whereNgspiceIsMissingTheCommandThatInstallsItIsNamed() {
		AssertionError missing = assertThrows(AssertionError.class, () -> Ngspice.operatingPoints("there-is-no-such-command", List.of("* nothing\n.end\n")));
		assertTrue(missing.getMessage().contains("apt-get install -y ngspice"), missing.getMessage());
	}
}
