/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hullwright.network.Boat;
import hullwright.network.CableRun;
import hullwright.network.Drop;
import hullwright.network.Element;
import hullwright.network.Fitting;
import hullwright.network.Network;
import hullwright.network.Origin;
import hullwright.network.part.Adapter;
import hullwright.network.part.Cable;
import hullwright.network.part.Cap;
import hullwright.network.part.Cord;
import hullwright.network.part.DeviceModel;
import hullwright.network.part.Part;
import hullwright.network.part.PartIdentity;
import hullwright.network.part.Tee;
import hullwright.network.power.Supply;
import hullwright.quantity.BitRate;
import hullwright.quantity.Length;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.edit.AddCap;
import hullwright.rules.edit.AddDrop;
import hullwright.rules.edit.AddFeed;
import hullwright.rules.edit.EditIntent;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.FixProposal;
import hullwright.rules.edit.InsertInBackbone;
import hullwright.rules.edit.InsertInBackbone.Side;
import hullwright.rules.edit.InsertInDrop;
import hullwright.rules.edit.MoveInBackbone;
import hullwright.rules.edit.PlugInto;
import hullwright.rules.edit.Remove;
import hullwright.rules.edit.ReplacePart;
import hullwright.rules.edit.Reword;
import hullwright.rules.edit.SetLength;
import hullwright.rules.edit.SetProperty;
import hullwright.rules.edit.SetRate;
import hullwright.rules.report.ReportedFinding;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

/**
 * Each kind of edit that a rule can want, as it comes to stand in a text.
 */
class EditIntentsTest {

	private static final String BOAT = """
			import "standard:parts"
			import "standard:messages"
			series Skerry "Invented" {
			  options { flybridge }
			  supply house "House" { 12 V; fuse 5 A }
			  network instruments {
			    backbone of light {
			      terminator left : endFemale
			      // the bow
			      tee bow : block4 // in the locker
			      cable 10 m
			      tee stern : block4
			      when flybridge {
			        cable 5 m
			        tee top : tee1
			      }
			      terminator right : endMale
			    }
			    drop bow.1 via 2 m of light, 0.5 m to display : instrumentDisplay // at the wheel
			    drop stern.1 to depth : depthTransducer
			    drop stern.2 via 1 m of light to pilot : instrumentDisplay { label "P1"; instance 0 for 127250 }
			    drop stern.3 via 1 m to repeater : instrumentDisplay {
			      label "R1"
			    }
			  }
			}
			""";

	/** Finds that a boat is not as it is wanted, and how it becomes so. */
	private record Wanted(Function<Boat, Optional<EditIntent>> missing) implements BoatRule {

		@Override
		public RuleDescription description() {
			return RuleDescription.of("trial/not-as-wanted", "Not as wanted", Severity.WARNING, "not as wanted", "a trial");
		}

		@Override
		public List<Finding> check(BoatUnderCheck boat) {
			return missing.apply(boat.boat()).map(intent -> boat.finding(boat.boat().origin())
					.fix(new Fix("Change", Fix.Reach.DESIGN, List.of(intent))).build()).stream().toList();
		}
	}

	/** The text after the one fix that a rule offers, or what came of it. */
	private static String changed(Predicate<Boat> isWrong, Function<Boat, EditIntent> intent) {
		return changed(BOAT, isWrong, intent);
	}

	private static String changed(String text, Predicate<Boat> isWrong, Function<Boat, EditIntent> intent) {
		Wanted rule = new Wanted(boat -> Optional.of(boat).filter(isWrong).map(intent));
		Checker checker = new Checker(new RuleSet(List.of(new LoadedRule(rule, rule.description(), "trial.rules")), List.of()), Duration.ofSeconds(10));
		CheckRequest request = Boats.request(text);
		ReportedFinding finding = checker.check(request).findings().get(0);
		List<FixProposal> proposals = checker.proposals(request, finding);
		return proposals.isEmpty() ? "not offered" : proposals.get(0).appliedTo("boat.hull", text);
	}

	private static Network network(Boat boat) {
		return boat.networks().get(0);
	}

	private static Optional<Element> inWalk(Boat boat, String name) {
		return network(boat).backbones().get(0).elements().stream().filter(element -> element.origin().simpleName().equals(name)).findFirst();
	}

	private static Origin placeOf(Boat boat, String name) {
		return inWalk(boat, name).map(Element::origin).orElseThrow();
	}

	private static Optional<Drop> drop(Boat boat, String device) {
		return network(boat).drops().stream().filter(drop -> drop.origin().simpleName().equals(device)).findFirst();
	}

	private static Origin device(Boat boat, String name) {
		return drop(boat, name).orElseThrow().device().orElseThrow().origin();
	}

	private static <T extends Part> PartIdentity part(Boat boat, Class<T> kind, String name) {
		return boat.partsOnOffer().of(kind).stream().map(Part::identity).filter(part -> part.name().equals(name)).findFirst().orElseThrow();
	}

	private static PartIdentity tee1(Boat boat) {
		return part(boat, Tee.class, "tee1");
	}

	private static Function<Boat, EditIntent> insert(String beside, Side side) {
		return boat -> new InsertInBackbone(placeOf(boat, beside), side, "tee", "spare", tee1(boat));
	}

	private static Predicate<Boat> lacks(String name) {
		return boat -> inWalk(boat, name).isEmpty();
	}

	@Test
	void aPartGoesBehindAnotherAndItsComment() {
		assertEquals(BOAT.replace("// in the locker\n", "// in the locker\n      tee spare : tee1\n"), changed(lacks("spare"), insert("bow", Side.AFTER)));
	}

	@Test
	void aPartGoesBeforeAnotherAndItsComment() {
		assertEquals(BOAT.replace("      // the bow\n", "      tee spare : tee1\n      // the bow\n"), changed(lacks("spare"), insert("bow", Side.BEFORE)));
	}

	@Test
	void aPartThatOnlySomeBoatsNeedIsFittedToThose() {
		Predicate<Boat> topAlone = boat -> inWalk(boat, "top").isPresent() && inWalk(boat, "spare").isEmpty();
		assertEquals(BOAT.replace("      tee stern : block4\n", "      tee stern : block4\n      tee spare : tee1 when flybridge\n"),
				changed(topAlone, insert("stern", Side.AFTER)));
		assertEquals(BOAT.replace("        tee top : tee1\n", "        tee top : tee1\n        tee spare : tee1\n"),
				changed(topAlone, insert("top", Side.AFTER)));
	}

	@Test
	void aPartMovesWithWhatIsSaidOfIt() {
		Predicate<Boat> bowFirst = boat -> {
			List<String> names = network(boat).backbones().get(0).elements().stream().map(element -> element.origin().simpleName()).toList();
			return names.indexOf("bow") < names.indexOf("stern");
		};
		assertEquals(BOAT.replace("      tee bow : block4 // in the locker\n", "").replace("      tee stern : block4\n",
				"      tee stern : block4\n      tee bow : block4 // in the locker\n"),
				changed(bowFirst, boat -> new MoveInBackbone(placeOf(boat, "bow"), placeOf(boat, "stern"), Side.AFTER)));
	}

	@Test
	void aDropGoesWithItsDeviceAndAPartThatIsNamedElsewhereStays() {
		assertEquals(BOAT.replace("    drop stern.1 to depth : depthTransducer\n", ""),
				changed(boat -> drop(boat, "depth").isPresent(), boat -> new Remove(device(boat, "depth"))));
		assertEquals("not offered", changed(boat -> inWalk(boat, "bow").isPresent(), boat -> new Remove(placeOf(boat, "bow"))));
	}

	@Test
	void aPieceOfADropGoesWithItsComma() {
		assertEquals(BOAT.replace("2 m of light, 0.5 m to", "2 m of light to"),
				changed(boat -> drop(boat, "display").orElseThrow().legs().size() == 2, boat -> new Remove(drop(boat, "display").orElseThrow().legs().get(1).origin())));
		assertEquals(BOAT.replace("2 m of light, 0.5 m to", "0.5 m to"),
				changed(boat -> drop(boat, "display").orElseThrow().legs().size() == 2, boat -> new Remove(drop(boat, "display").orElseThrow().legs().get(0).origin())));
		assertEquals(BOAT.replace("stern.3 via 1 m to", "stern.3 to"),
				changed(boat -> drop(boat, "repeater").orElseThrow().legs().size() == 1, boat -> new Remove(drop(boat, "repeater").orElseThrow().legs().get(0).origin())));
	}

	@Test
	void aDropIsPluggedIntoAnotherPort() {
		assertEquals(BOAT.replace("drop stern.3 via 1 m", "drop bow.4 via 1 m"), changed(boat -> drop(boat, "repeater").orElseThrow().from().port().equals(Optional.of(3)),
				boat -> new PlugInto(device(boat, "repeater"), "stern.3", "bow.4")));
		assertEquals("not offered", changed(boat -> drop(boat, "repeater").orElseThrow().from().port().equals(Optional.of(3)),
				boat -> new PlugInto(device(boat, "repeater"), "stern.1", "bow.4")));
	}

	@Test
	void anotherPartTakesThePlaceOfOne() {
		assertEquals(BOAT.replace("tee bow : block4", "tee bow : block6"),
				changed(boat -> partOf(boat, "bow").equals("block4"), boat -> new ReplacePart(placeOf(boat, "bow"), part(boat, Tee.class, "block4"), part(boat, Tee.class, "block6"))));
		assertEquals(BOAT.replace("repeater : instrumentDisplay", "repeater : wideInstrumentDisplay"),
				changed(boat -> drop(boat, "repeater").orElseThrow().device().orElseThrow().model().identity().name().equals("instrumentDisplay"),
						boat -> new ReplacePart(device(boat, "repeater"), part(boat, DeviceModel.class, "instrumentDisplay"), part(boat, DeviceModel.class, "wideInstrumentDisplay"))));
	}

	private static String partOf(Boat boat, String name) {
		return ((Fitting) inWalk(boat, name).orElseThrow()).part().identity().name();
	}

	@Test
	void anotherLengthIsFittedInTheWalkAndInADrop() {
		assertEquals(BOAT.replace("cable 10 m", "cable 15 m"),
				changed(boat -> cable(boat).length().equals(new Length(10)), boat -> new SetLength(cable(boat).origin(), new Length(10), new Length(15))));
		assertEquals(BOAT.replace("via 2 m of light, 0.5 m", "via 2 m of light, 1 m"),
				changed(boat -> ((CableRun) drop(boat, "display").orElseThrow().legs().get(1)).length().equals(new Length(0.5)),
						boat -> new SetLength(drop(boat, "display").orElseThrow().origin(), new Length(0.5), new Length(1))));
	}

	private static CableRun cable(Boat boat) {
		return network(boat).backbones().get(0).elements().stream().filter(CableRun.class::isInstance).map(CableRun.class::cast).findFirst().orElseThrow();
	}

	@Test
	void aSerialLineSignalsAtAnotherRate() {
		String boat = """
				import "standard:serial"
				series Skerry "Invented" {
				  device compass : fluxgateCompass
				  device repeater : headingRepeater
				  serial headings "Headings"%s { // the old one
				    from compass.out
				    to repeater.in1
				  }
				}
				""";
		BitRate slow = new BitRate(4800);
		Predicate<Boat> isWrong = read -> !read.serialLines().get(0).rate().equals(Optional.of(slow));
		Function<Boat, EditIntent> intent = read -> new SetRate(read.serialLines().get(0).origin(), slow);
		assertEquals(boat.formatted(" at 4800 baud"), changed(boat.formatted(" at 38400 baud"), isWrong, intent));
		assertEquals(boat.formatted(" at 4800 baud"), changed(boat.formatted(""), isWrong, intent));
	}

	@Test
	void aCableOfAnotherKindSaysSo() {
		assertEquals(BOAT.replace("cable 10 m", "cable 10 m of mid"),
				changed(boat -> cable(boat).cable().orElseThrow().identity().name().equals("light"),
						boat -> new ReplacePart(cable(boat).origin(), cable(boat).cable().orElseThrow().identity(), part(boat, Cable.class, "mid"))));
	}

	@Test
	void aPropertyIsSetWhereItStandsOrBesideOthersOrInNewBraces() {
		assertEquals(BOAT.replace("label \"P1\"", "label \"P2\""), changed(boat -> label(boat, "pilot").equals("P1"), setLabel("pilot", "\"P2\"")));
		assertEquals(BOAT.replace("label \"R1\"", "label \"R2\""), changed(boat -> label(boat, "repeater").equals("R1"), setLabel("repeater", "\"R2\"")));
		assertEquals(BOAT.replace("display : instrumentDisplay //", "display : instrumentDisplay { label \"D1\" } //"),
				changed(boat -> label(boat, "display").isEmpty(), setLabel("display", "\"D1\"")));
		assertEquals(BOAT.replace("label \"P1\"; instance 0 for 127250", "label \"P1\"; instance 0 for 127250; device instance 3"),
				changed(boat -> instance(boat, "pilot").isEmpty(), boat -> new SetProperty(device(boat, "pilot"), "device instance", "3")));
		assertEquals(BOAT.replace("      label \"R1\"\n", "      label \"R1\"\n      device instance 3\n"),
				changed(boat -> instance(boat, "repeater").isEmpty(), boat -> new SetProperty(device(boat, "repeater"), "device instance", "3")));
		assertEquals(BOAT.replace("fuse 5 A", "fuse 3 A"), changed(boat -> supply(boat).fuse().orElseThrow().rating().si() == 5,
				boat -> new SetProperty(supply(boat).origin(), "fuse", "3 A")));
	}

	private static Supply supply(Boat boat) {
		return boat.power().supplies().get(0);
	}

	private static Optional<Integer> instance(Boat boat, String device) {
		return drop(boat, device).orElseThrow().device().orElseThrow().settings().deviceInstance();
	}

	private static String label(Boat boat, String device) {
		return drop(boat, device).orElseThrow().device().orElseThrow().label();
	}

	private static Function<Boat, EditIntent> setLabel(String device, String label) {
		return boat -> new SetProperty(device(boat, device), "label", label);
	}

	@Test
	void anAdapterGoesIntoADrop() {
		Function<Boat, PartIdentity> adapter = boat -> part(boat, Adapter.class, "microToPush");
		assertEquals(BOAT.replace("via 2 m of light, 0.5 m", "via 2 m of light, microToPush, 0.5 m"),
				changed(legsOf("display", 2), boat -> new InsertInDrop(device(boat, "display"), 1, adapter.apply(boat))));
		assertEquals(BOAT.replace("via 2 m of light, 0.5 m", "via 2 m of light, 0.5 m, microToPush"),
				changed(legsOf("display", 2), boat -> new InsertInDrop(device(boat, "display"), 2, adapter.apply(boat))));
		assertEquals(BOAT.replace("drop stern.1 to", "drop stern.1 via microToPush to"),
				changed(legsOf("depth", 0), boat -> new InsertInDrop(device(boat, "depth"), 0, adapter.apply(boat))));
	}

	private static Predicate<Boat> legsOf(String device, int number) {
		return boat -> drop(boat, device).orElseThrow().legs().size() == number;
	}

	@Test
	void whatHangsOnTheBackboneIsAddedAtTheEndOfItsNetwork() {
		String end = "      label \"R1\"\n    }\n";
		assertEquals(BOAT.replace(end, end + "    cap bow.2 with microPortCap\n"), changed(boat -> network(boat).caps().isEmpty(),
				boat -> new AddCap(network(boat).origin(), "bow.2", part(boat, Cap.class, "microPortCap"))));
		assertEquals(BOAT.replace(end, end + "    feed bow.3 via powerCord from house\n"), changed(boat -> network(boat).feeds().isEmpty(),
				boat -> new AddFeed(network(boat).origin(), "bow.3", part(boat, Cord.class, "powerCord"), "house")));
		assertEquals(BOAT.replace(end, end + "    drop top.1 via 2 m to depth2 : depthOnlyTransducer when flybridge\n"),
				changed(boat -> inWalk(boat, "top").isPresent() && drop(boat, "depth2").isEmpty(), boat -> new AddDrop(network(boat).origin(), "top.1",
						Optional.of(new Length(2)), "depth", part(boat, DeviceModel.class, "depthOnlyTransducer"))));
	}

	@Test
	void wordsThatAreSaidOfAPartAreTakenAddedOrExchanged() {
		String fed = BOAT.replace("      tee bow : block4 // in the locker\n",
				"      tap feed : plainTap from house earths shield label \"PWR\"\n      tee bow : block4 // in the locker\n");
		Function<Boat, Origin> feed = boat -> inWalk(boat, "feed").orElseThrow().origin();
		assertEquals(fed.replace(" earths shield", ""),
				changed(fed, boat -> earthsShield(boat, "feed"), boat -> new Reword(feed.apply(boat), "earths shield", "")));
		assertEquals(fed.replace("\"PWR\"", "\"P1\""), changed(fed, boat -> details(boat, "feed").label().equals("PWR"),
				boat -> new Reword(feed.apply(boat), "label \"PWR\"", "label \"P1\"")));
		assertEquals("not offered", changed(fed, boat -> earthsShield(boat, "feed"), boat -> new Reword(feed.apply(boat), "earths hull", "")));
		String optional = fed.replace(" earths shield label \"PWR\"", " when flybridge // the tap");
		assertEquals(optional.replace("from house when", "from house earths shield when"), changed(optional,
				boat -> inWalk(boat, "feed").isPresent() && !earthsShield(boat, "feed"), boat -> new Reword(feed.apply(boat), "", "earths shield")));
	}

	private static boolean earthsShield(Boat boat, String part) {
		return details(boat, part).earthsShield();
	}

	private static Fitting.Details details(Boat boat, String part) {
		return ((Fitting) inWalk(boat, part).orElseThrow()).details();
	}
}
