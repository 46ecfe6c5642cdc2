/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

import hullwright.lang.HullLanguage;
import hullwright.lang.imports.VisibleCatalogs;
import hullwright.network.Boat;
import hullwright.network.CableRun;
import hullwright.network.DevicePortRef;
import hullwright.network.Drop;
import hullwright.network.Element;
import hullwright.network.Feed;
import hullwright.network.FittedDevice;
import hullwright.network.Fitting;
import hullwright.network.Join;
import hullwright.network.Network;
import hullwright.network.PortRef;
import hullwright.network.data.SentMessage;
import hullwright.network.data.Timing;
import hullwright.network.layout.Way;
import hullwright.network.part.Cord;
import hullwright.network.part.Load;
import hullwright.network.power.PowerState;
import hullwright.network.power.Supply;
import hullwright.quantity.Current;
import hullwright.quantity.Duration;
import hullwright.quantity.Length;
import hullwright.quantity.Power;
import hullwright.quantity.Voltage;
import hullwright.resolve.SeriesPlan;
import hullwright.spec.Series;
import org.junit.jupiter.api.Test;

/**
 * What the resolver settles beyond the walk along a backbone: feeds, ways, data, power, lines, and what hulls change.
 */
class WholeBoatTest {

	private static final String KIT = """
			catalog Kit "Invented" {
			  family f { standard; rated 4 A }
			  message 127505 "Tank" { single; length 8 bytes; every 2500 ms; key instance }
			  message 127250 "Heading" { single; length 8 bytes; every 100 ms; key reference of magnetic or true }
			  sentence VHW { length 39 characters; every 1 s }
			  cable light { ends f male, f female; power 22 AWG; stock 1 m, 5 m, 10 m }
			  cable reel { power 22 AWG }
			  terminator end { end f male; 120 ohm }
			  tee block { backbone f male, f female; ports 1..4 : f female }
			  cap blank { end f male }
			  cord powerCord { f male to bare; length 1 m; fuse 3 A of blade }
			  fuse blade { rated 3 A; opens at 2 times rated within 5 s; opens at 1.35 times rated within 10 min }
			  device sensor { port bus : f male; load 2.4 W at 12 V, at most 3 W; sends 127250 as magnetic }
			  device tanks { port bus : f male; load 1 LEN; sends 127505, 4 instances, instance settable }
			  device bridge { port a : f male; port b : f male }
			  device gateway { port bus : f male; line in1 : listener, 4800 baud }
			  device log { line out : talker, differential, 4800 baud; sends VHW by out }
			}
			""";

	private static SeriesPlan plan(String series) {
		ReadProject project = new SpecReader().read(Snapshot.of(Map.of("kit.hull", KIT, "boat.hull",
				"import \"kit.hull\"\nseries Skerry \"Invented\" {\n options { a; b }\n places { helm; stern }\n" + series + "\n}\n")));
		assertEquals(List.of(), project.problems().stream().map(problem -> problem.origin().line() + " " + problem.message()).toList());
		Series read = (Series) project.files().get("boat.hull").getDeclarations().get(0);
		return new SeriesPlan(read, HullLanguage.services().getInstance(VisibleCatalogs.class).from(read), new TextOrigins());
	}

	private static Boat boat(String series, String... options) {
		return plan(series).boat(SeriesPlan.ordered(new TreeSet<>(List.of(options))));
	}

	private static Boat hull(String series, String hull) {
		SeriesPlan plan = plan(series);
		return plan.boat(plan.hull(hull).orElseThrow());
	}

	private static String network(String walk, String rest) {
		return "network n { backbone of light { " + walk + " }\n" + rest + "\n}\n";
	}

	private static Network first(Boat boat) {
		return boat.networks().get(0);
	}

	private static List<Element> walk(Boat boat) {
		return first(boat).backbones().get(0).elements();
	}

	private static List<String> names(Boat boat) {
		return walk(boat).stream().map(element -> element.origin().simpleName()).toList();
	}

	private static List<String> drops(Boat boat) {
		return first(boat).drops().stream().map(drop -> drop.origin().simpleName()).toList();
	}

	@Test
	void aWayBecomesTheShortestStockLengthThatReaches() {
		List<Element> walk = walk(boat("route keel from helm to stern 9 m\n" + network("""
				cable along keel
				cable along 5 m
				cable along 11 m
				cable along 3 m of reel
				cable 4 m along keel
				""", "")));
		// 9 m of way is a moulded cable of 10 m; where none reaches, and for cable by the metre, it is the way itself
		assertEquals(List.of(10.0, 5.0, 11.0, 3.0, 4.0), walk.stream().map(element -> ((CableRun) element).length().metres()).toList());
		assertEquals(Optional.of(new Way(new Length(9), Optional.of("keel"))), ((CableRun) walk.get(4)).way());
	}

	@Test
	void aFeedCapsAndAJoin() {
		Network network = first(boat("supply house { 12 V }\n" + network("tee t : block tee u : block", """
				feed t.1 via powerCord, 1 m of reel from house earths shield label "PWR"
				cap t.2, u.3 with blank
				join u via 2 m to t.4
				""")));
		Feed feed = network.feeds().get(0);
		assertEquals("Skerry.n.feed-t-1", feed.name());
		assertEquals(new PortRef("Skerry.n.t", Optional.of(1)), feed.from());
		assertEquals(List.of("Skerry.house"), feed.supplies());
		assertTrue(feed.earthsShield());
		Cord cord = (Cord) ((Fitting) feed.legs().get(0)).part();
		assertEquals(new Current(3), cord.fuse().orElseThrow().rating());
		assertEquals(List.of(1.35, 2.0), cord.fuse().get().kind().orElseThrow().openings().stream().map(opening -> opening.times()).toList());
		assertEquals(List.of(new PortRef("Skerry.n.t", Optional.of(2)), new PortRef("Skerry.n.u", Optional.of(3))),
				network.caps().stream().map(cap -> cap.port()).toList());
		Join join = network.joins().get(0);
		assertEquals(new PortRef("Skerry.n.u", Optional.empty()), join.from());
		assertEquals(new PortRef("Skerry.n.t", Optional.of(4)), join.to());
	}

	@Test
	void aBlockOnADropIsAPlaceForMoreDrops() {
		Boat boat = boat(network("tee t : block", """
				drop t.1 via 1 m, extra : block, 2 m to depth : sensor
				drop extra.2 via 1 m to two : sensor
				drop t.2 via 1 m, bare : block
				"""));
		Drop two = first(boat).drops().get(1);
		assertEquals(new PortRef("Skerry.n.extra", Optional.of(2)), two.from());
		assertEquals("Skerry.n.extra", first(boat).drops().get(0).legs().get(1).name());
		assertEquals("Skerry.n.t-2", first(boat).drops().get(2).name());
		assertTrue(first(boat).drops().get(2).device().isEmpty());
	}

	@Test
	void oneBridgeHangsOnTwoNetworks() {
		Boat boat = boat("""
				network m { backbone of light { tee t : block } drop t.1 via 1 m to link.a }
				network n when a { backbone of light { tee t : block } drop t.1 via 1 m to link.b }
				device link : bridge at helm
				""", "a");
		List<Drop> ends = boat.networks().stream().map(network -> network.drops().get(0)).toList();
		assertEquals(List.of(Optional.of("a"), Optional.of("b")), ends.stream().map(Drop::devicePort).toList());
		assertEquals(boat.devices().get(0), ends.get(0).device().orElseThrow());
		assertEquals(boat.devices().get(0), ends.get(1).device().orElseThrow());
		assertEquals("Skerry.m.link-a", ends.get(0).name());
	}

	@Test
	void aNetworkThatAnOptionBringsIsThereWithItOnly() {
		String text = "network n when a { backbone of light { tee t : block } }";
		assertEquals(0, boat(text).networks().size());
		assertEquals(1, boat(text, "a").networks().size());
	}

	@Test
	void blocksOfConditionsNest() {
		String text = network("tee t : block when a { cable 1 m when b { tee u : block } else { tee v : block } }", "");
		assertEquals(List.of("t"), names(boat(text)));
		// a cable has one name on all boats: that of the first part it can lead to
		assertEquals(List.of("t", "t-to-u", "v"), names(boat(text, "a")));
		assertEquals(List.of("t", "t-to-u", "u"), names(boat(text, "a", "b")));
	}

	@Test
	void fromAHullOnAndUpToOne() {
		String text = network("tee t : block", """
				drop t.1 to old : sensor when until hull 4
				drop t.1 to young : sensor when from hull 5
				""") + "hull 4 hull 5 hull demonstrator";
		assertEquals(List.of("old"), drops(hull(text, "4")));
		assertEquals(List.of("young"), drops(hull(text, "5")));
		assertEquals(List.of("young"), drops(hull(text, "demonstrator")));
		assertEquals(List.of("young"), drops(boat(text)));
	}

	@Test
	void preparedForLater() {
		String text = network("tee t : block", """
				drop t.1 via 2 m to radar : sensor prepared
				when a { drop t.2 via 1 m to pilot : sensor when b, else prepared }
				""");
		assertEquals(List.of("radar"), drops(boat(text)));
		assertTrue(first(boat(text)).drops().get(0).device().isEmpty());
		assertTrue(first(boat(text, "a")).drops().get(1).device().isEmpty());
		assertTrue(first(boat(text, "a", "b")).drops().get(1).device().isPresent());
	}

	@Test
	void loadsBehaveAsTheirUnitSays() {
		Boat boat = boat(network("tee t : block", "drop t.1 to depth : sensor drop t.2 to two : tanks"));
		Load watts = first(boat).drops().get(0).device().orElseThrow().model().power().load().orElseThrow();
		assertEquals(Load.Behaviour.CONSTANT_POWER, watts.behaviour());
		assertEquals(new Power(2.4), watts.nominal());
		assertEquals(Optional.of(new Voltage(12)), watts.reference());
		assertEquals(Optional.of(new Power(3)), watts.most());
		assertEquals(Load.Behaviour.CONSTANT_CURRENT, first(boat).drops().get(1).device().orElseThrow().model().power().load().orElseThrow().behaviour());
	}

	@Test
	void whatADeviceTellsHasItsInstances() {
		Boat boat = boat(network("tee t : block", """
				drop t.1 to depth : tanks
				drop t.2 to two : tanks { instance 4 and 5 for 127505; device instance 3 }
				drop t.3 to heading : sensor { sends 127250 every 50 ms }
				drop t.4 to silent : sensor { mutes 127250 }
				"""));
		assertEquals(List.of(0, 1, 2, 3), instances(boat, 0));
		assertEquals(List.of(4, 5), instances(boat, 1));
		assertEquals(Optional.of(3), first(boat).drops().get(1).device().orElseThrow().settings().deviceInstance());
		SentMessage heading = first(boat).drops().get(2).device().orElseThrow().sends().get(0);
		assertEquals(Timing.every(new Duration(0.05)), heading.timing());
		assertEquals("127250 as magnetic", heading.use().toString());
		assertTrue(heading.instance().isEmpty());
		assertEquals(List.of(), first(boat).drops().get(3).device().orElseThrow().sends());
	}

	private static List<Integer> instances(Boat boat, int drop) {
		return first(boat).drops().get(drop).device().orElseThrow().sends().stream().map(sent -> sent.instance().orElseThrow()).toList();
	}

	@Test
	void aSupplyHasTheVoltageOfWhatIsBehindIt() {
		Boat boat = boat("""
				switch key
				bank service { 24 V, lowest 22 V, highest 28.8 V }
				bank start { 24 V; starts engines }
				converter forward { from service; 13.8 V; isolated; at most 8 A }
				supply mine { 12 V, lowest 11 V }
				supply converted { from forward; switch key }
				supply direct { from service }
				state cranking { on key; start dips to 16 V for 2 s }
				""");
		List<Supply> supplies = boat.power().supplies();
		assertEquals(List.of(12.0, 24.0), List.of(supplies.get(0), supplies.get(2)).stream().map(each -> each.voltages().nominal().orElseThrow().volts()).toList());
		assertEquals(Optional.of("Skerry.forward"), supplies.get(1).from());
		assertEquals(new Voltage(13.8), supplies.get(1).voltages().nominal().orElseThrow());
		PowerState cranking = boat.power().states().get(0);
		assertEquals(new Voltage(16), cranking.dips().get("Skerry.start").to());
	}

	@Test
	void aSerialLineEndsAtTheDevicesThatAreOnBoard() {
		String text = network("tee t : block", "drop t.1 to gateway : gateway when a") + """
				device log : log { }
				serial logLine at 4800 baud { from log.out; to gateway.in1; cable 5 m }
				""";
		assertEquals(List.of(new DevicePortRef("Skerry.n.gateway", "in1")), boat(text, "a").serialLines().get(0).to());
		assertEquals(List.of(), boat(text).serialLines().get(0).to());
		assertEquals(List.of(new DevicePortRef("Skerry.log", "out")), boat(text).serialLines().get(0).from());
		FittedDevice log = boat(text).devices().get(0);
		assertEquals(List.of("VHW"), log.sends().stream().map(sent -> sent.use().toString()).toList());
	}

	@Test
	void aHullChangesAddsAndRemoves() {
		String text = network("tee t : block cable long 3 m tee u : block terminator e : end", """
				drop t.1 via 1 m to depth : sensor
				drop t.2 via 1 m to two : sensor
				""") + """
				device log : log
				hull 1
				hull 2 {
				  n.depth : tanks via 5 m
				  n.long : 8 m of reel
				  remove n.two
				  remove log
				  remove n.e
				  add after n.u { cable 1 m tee v : block }
				  add before n.t { terminator s : end }
				  add drop n.v.1 to three : sensor
				  add cap n.v.2 with blank
				}
				""";
		Boat two = hull(text, "2");
		assertEquals(List.of("s", "t", "long", "u", "u-to-v", "v"), names(two));
		assertEquals(8, ((CableRun) walk(two).get(2)).length().metres());
		assertEquals("reel", ((CableRun) walk(two).get(2)).cable().orElseThrow().identity().name());
		assertEquals(List.of("depth", "three"), drops(two));
		assertEquals("tanks", first(two).drops().get(0).device().orElseThrow().model().identity().name());
		assertEquals(5, ((CableRun) first(two).drops().get(0).legs().get(0)).length().metres());
		assertEquals(4, first(two).drops().get(0).device().orElseThrow().sends().size());
		assertEquals(List.of(), two.devices());
		assertEquals(1, first(two).caps().size());
		Boat one = hull(text, "1");
		assertEquals(List.of("t", "long", "u", "e"), names(one));
		assertFalse(one.devices().isEmpty());
	}

	@Test
	void aHullMayAddBesideWhatItAdds() {
		String text = network("tee t : block terminator e : end", "") + """
				hull 1 {
				  add after n.t { cable 1 m tee u : block }
				  add before n.e { cable 3 m }
				  add after n.u { cable 2 m tee v : block }
				  add after n.w { tee w : block }
				}
				""";
		assertEquals(List.of("t", "t-to-u", "u", "u-to-v", "v", "t-to-e", "e"), names(hull(text, "1")));
	}

	/** Common practice: the cap comes off the port that something is plugged into. */
	@Test
	void whatAHullAddsToACappedPortTakesTheCapOff() {
		String text = network("tee t : block", "cap t.1, t.2 with blank") + "hull 1 { add drop n.t.2 via 1 m to late : sensor }";
		assertEquals(List.of(1, 2), caps(boat(text)));
		assertEquals(List.of(1), caps(hull(text, "1")));
	}

	private static List<Integer> caps(Boat boat) {
		return first(boat).caps().stream().map(cap -> cap.port().port().orElseThrow()).toList();
	}

	@Test
	void whatAHullChangesAndItsOptionsLeaveOutIsLeftOut() {
		String text = network("tee t : block when a", "drop t.1 to depth : sensor when a") + "hull 1 { n.depth : tanks via 2 m\n n.t : block }";
		assertEquals(List.of(), drops(hull(text, "1")));
		assertEquals(List.of(), names(hull(text, "1")));
	}
}
