/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import static hullwright.lang.ide.ServedProject.answer;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.HoverParams;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What the pointer is told of the boat in view. The boat is invented.
 */
class BoatHoverTest {

	private static final String BOAT = """
			import "standard:parts"

			series Dinghy "Dinghy for tests" revision "A" {
				places { helm "Helm" }
				supply battery { 12 V, lowest 11 V, highest 14.6 V; fuse 3 A; lead 2 m each way of 1.5 mm2 }
				network instruments of kind instrument bus {
					backbone of light {
						terminator left : endFemale at helm
						tap feed : midTap at helm from battery earths shield
						cable 1 m
						tee first : block4 at helm
						cable 5 m
						tee last : block4 at helm
						terminator right : endMale at helm
					}
					drop last.1 via 2 m of light to display : instrumentDisplay at helm
				}
				hull 1
			}
			""";

	@TempDir
	private Path folder;

	/** The hover at a place, once the boat is known. */
	private static String hover(ServedProject project, String marked) throws Exception {
		String shown = "";
		for (int attempt = 0; attempt < 300; attempt++) {
			Hover hover = answer(project.server.getTextDocumentService()
					.hover(new HoverParams(project.identifier("dinghy.hull"), project.at("dinghy.hull", marked))));
			shown = hover == null ? "" : hover.getContents().getRight().getValue();
			if (shown.contains("boat in view")) {
				return shown;
			}
			Thread.sleep(100);
		}
		return shown;
	}

	@Test
	void aPlaceOnTheBackboneIsToldInMetresFromItsStart() throws Exception {
		try (ServedProject project = new ServedProject(folder, Map.of("yard.hull", "profile Yard from standard {\n}\n", "dinghy.hull", BOAT))) {
			project.open("dinghy.hull", BOAT);
			// 1 m and 5 m of cable lie before the last tee
			String tee = hover(project, "tee la|st");
			assertTrue(tee.contains("6.0 m along the backbone"), tee);
			String cable = hover(project, "cab|le 5 m");
			assertTrue(cable.contains("from 1.0 m to 6.0 m along the backbone"), cable);
			assertTrue(cable.contains("A of 3 A that it is rated for"), cable);
		}
	}

	@Test
	void aDeviceIsToldWithVoltageCurrentAndWhatIsLeft() throws Exception {
		try (ServedProject project = new ServedProject(folder, Map.of("yard.hull", "profile Yard from standard {\n}\n", "dinghy.hull", BOAT))) {
			project.open("dinghy.hull", BOAT);
			String device = hover(project, "dis|play : instrumentDisplay");
			assertTrue(device.contains("drop of 2 m"), device);
			Matcher figures = Pattern.compile("([0-9.]+) V, ([0-9.]+) A at the lowest supply voltage with warm wires; ([0-9.]+) V left").matcher(device);
			assertTrue(figures.find(), device);
			double volts = Double.parseDouble(figures.group(1));
			assertTrue(volts > 10.5 && volts < 11, "the lowest bank gives 11 V, and little of that is lost on 8 m: " + device);
			// the standard catalog lets an instrument display work from 9 V on
			assertEquals(volts - 9, Double.parseDouble(figures.group(3)), 0.011, device);
		}
	}

	@Test
	void behindAFindingStandsTheRuleWithWhereItsLimitWasRead() throws Exception {
		String tooLong = BOAT.replace("via 2 m of light to display", "via 7 m of light to display");
		try (ServedProject project = new ServedProject(folder, Map.of("yard.hull", "profile Yard from standard {\n}\n", "dinghy.hull", tooLong))) {
			project.open("dinghy.hull", tooLong);
			project.client.next(list -> RecordingClient.texts(list).stream().anyMatch(text -> text.startsWith("cabling/drop-too-long")));
			String device = hover(project, "dis|play : instrumentDisplay");
			assertTrue(device.contains("Drop too long (cabling/drop-too-long), after public cabling guide"), device);
			assertTrue(device.contains("hullwright explain cabling/drop-too-long"), device);
			assertTrue(!hover(project, "tee la|st").contains("explain"), "nothing is wrong there");
		}
	}
}
