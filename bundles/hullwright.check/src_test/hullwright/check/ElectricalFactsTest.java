/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

import hullwright.lang.HullLanguage;
import hullwright.lang.imports.VisibleCatalogs;
import hullwright.network.Boat;
import hullwright.network.part.Connector;
import hullwright.network.part.ConnectorFamily;
import hullwright.network.part.Gender;
import hullwright.network.part.Part;
import hullwright.network.part.Tee;
import hullwright.quantity.Current;
import hullwright.quantity.Resistance;
import hullwright.resolve.SeriesPlan;
import hullwright.spec.Series;
import org.junit.jupiter.api.Test;

/**
 * What texts state for the electrical analyses reaches the records, and what they leave unsaid stays unsaid.
 */
class ElectricalFactsTest {

	private static final String CATALOG = """
			catalog Kit "Invented" {
			  family f "Screwed" { standard; rated 4 A; contact 5 mohm }
			  family g { vendor }
			  tee tee { backbone f male, f female; ports 1..2 : f female }
			  tee other { backbone g male, g female; port 1 : f female }
			}
			""";

	private static Boat boat(String series) {
		ReadProject project = new SpecReader().read(Snapshot.of(Map.of("kit.hull", CATALOG, "boat.hull",
				"import \"kit.hull\"\nseries Skerry \"Invented\" {\n" + series + "\n}\n")));
		assertEquals(List.of(), project.problems().stream().map(problem -> problem.origin().line() + " " + problem.message()).toList());
		Series read = (Series) project.files().get("boat.hull").getDeclarations().get(0);
		return new SeriesPlan(read, HullLanguage.services().getInstance(VisibleCatalogs.class).from(read), new TextOrigins())
				.boat(SeriesPlan.ordered(new TreeSet<>()));
	}

	private static <P extends Part> P part(Class<P> kind, String name) {
		return boat("").partsOnOffer().of(kind).stream().filter(part -> part.identity().name().equals(name)).findFirst().orElseThrow();
	}

	@Test
	void aConnectorKnowsWhatItsFamilyStates() {
		Connector stated = part(Tee.class, "tee").ends().first().orElseThrow();
		assertEquals(new ConnectorFamily("f", "Screwed", true, Optional.of(new Current(4)), Optional.of(new Resistance(0.005))), stated.family());
		assertEquals("f male", stated.toString());
		assertEquals(new ConnectorFamily("g", "", false, Optional.empty(), Optional.empty()),
				part(Tee.class, "other").ends().first().orElseThrow().family());
	}

	@Test
	void theConnectorsOfOneBoatShareTheirFamilies() {
		List<Tee> tees = boat("").partsOnOffer().of(Tee.class);
		List<Connector> ports = tees.stream().flatMap(tee -> tee.ports().values().stream()).map(Optional::orElseThrow).toList();
		assertEquals(3, ports.size());
		ports.forEach(port -> assertSame(ports.get(0).family(), port.family()));
	}

	/** A yard's own catalog may declare the family of the standard one again, with values of its own. */
	@Test
	void familiesOfOneNameMate() {
		ConnectorFamily one = new ConnectorFamily("micro", "", true, Optional.of(new Current(4)), Optional.empty());
		ConnectorFamily same = new ConnectorFamily("micro", "M12", true, Optional.of(new Current(3)), Optional.empty());
		ConnectorFamily other = new ConnectorFamily("mini", "", true, Optional.of(new Current(4)), Optional.empty());
		assertEquals(List.of(true, false, false), List.of(
				new Connector(one, Gender.MALE).mates(new Connector(same, Gender.FEMALE)),
				new Connector(one, Gender.MALE).mates(new Connector(same, Gender.MALE)),
				new Connector(one, Gender.MALE).mates(new Connector(other, Gender.FEMALE))));
	}
}
