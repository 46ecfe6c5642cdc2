/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import static hullwright.lang.ide.ServedProject.answer;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.Position;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What is offered while a boat is written: only what goes on. The bar in a text is the caret; all parts are invented.
 */
class CompletionTest {

	private static final String KIT = """
			import "standard:messages"
			catalog Kit {
				family screw { standard }
				family lock { vendor }
				cable thin "Thin cable" { ends screw male, screw female; rated 3 A }
				cable lockCable { ends lock male, lock female }
				terminator plug { end screw female; 120 ohm }
				terminator socket { end screw male; 120 ohm }
				terminator lockPlug { end lock female; 120 ohm }
				tee block "Block of two" { backbone screw male, screw female; ports 1..2 : screw female }
				tee lockBlock { backbone lock male, lock female; port 1 : lock female }
				adapter lockToScrew { lock male to screw female; carries power }
				adapter screwToLock { screw male to lock female; carries power }
				device depth "Depth transducer" { lead 6 m screw male; supply 9 V .. 16 V; load 3 LEN }
				device lockDisplay "Display" { port bus : lock male; load 2 LEN }
				device odd { port bus : screw female; load 1 LEN }
			}
			""";

	private static final String BEFORE = "import \"kit.hull\"\nseries Sloop {\n\toptions { radar }\n\tplaces { helm; mast \"Mast\" }\n\tnetwork bus {\n";
	private static final String BACKBONE = "\t\tbackbone of thin { terminator a : plug cable 1 m tee bow : block cable 2 m terminator b : socket }\n";

	@TempDir
	private Path folder;

	/** What is offered at the bar, in its order. */
	private List<CompletionItem> offered(String marked) throws Exception {
		int bar = marked.indexOf('|');
		String text = marked.replace("|", "");
		try (ServedProject project = new ServedProject(folder, Map.of("kit.hull", KIT, "sloop.hull", text))) {
			project.open("sloop.hull", text);
			Position caret = Places.range(text, bar, 0).getStart();
			return answer(project.server.getTextDocumentService().completion(new CompletionParams(project.identifier("sloop.hull"), caret)))
					.map(list -> list, list -> list.getItems()).stream().sorted(java.util.Comparator.comparing(CompletionItem::getSortText)).toList();
		}
	}

	private List<String> labels(String marked) throws Exception {
		return offered(marked).stream().map(CompletionItem::getLabel).toList();
	}

	private static String detail(List<CompletionItem> offered, String label) {
		return offered.stream().filter(item -> item.getLabel().equals(label)).findFirst().orElseThrow().getDetail();
	}

	@Test
	void aTeeMatesWithTheCableBeforeIt() throws Exception {
		List<CompletionItem> offered = offered(BEFORE + "\t\tbackbone of thin { terminator a : plug cable 1 m tee bow : | } } }");
		assertEquals(List.of("block"), offered.stream().map(CompletionItem::getLabel).filter(label -> label.contains("lock")).toList());
		assertEquals("Block of two, screw male to screw female, 2 ports", detail(offered, "block"));
	}

	@Test
	void aTerminatorHasTheOtherGender() throws Exception {
		assertEquals(List.of("socket"), labels(BEFORE + "\t\tbackbone of thin { terminator a : plug cable 1 m tee bow : block terminator b : | } } }").stream()
				.filter(label -> List.of("plug", "socket", "lockPlug").contains(label)).toList());
		assertEquals(List.of("lockPlug", "plug", "socket"), labels(BEFORE + "\t\tbackbone of thin { terminator a : | } } }").stream()
				.filter(label -> List.of("plug", "socket", "lockPlug").contains(label)).sorted().toList(), "nothing stands before it");
	}

	@Test
	void whereNoPartMatesTheAdapterIsNamed() throws Exception {
		List<CompletionItem> offered = offered(BEFORE + BACKBONE + "\t\tdrop bow.1 via 1 m of lockCable to x : | } }");
		List<String> names = offered.stream().map(CompletionItem::getLabel).toList();
		assertTrue(names.contains("lockDisplay") && !names.contains("depth"), names.toString());
		List<CompletionItem> terminators = offered(BEFORE + "\t\tbackbone of lockCable { cable 1 m terminator b : | } } }");
		assertEquals(List.of("socket"), terminators.stream().map(CompletionItem::getLabel).filter(label -> List.of("plug", "socket", "lockPlug").contains(label)).toList());
		assertEquals("needs adapter lockToScrew to lock female; screw male", detail(terminators, "socket"));
	}

	@Test
	void aDropEndsAtADeviceThatItsCableFits() throws Exception {
		List<CompletionItem> offered = offered(BEFORE + BACKBONE + "\t\tdrop bow.1 via 1 m of thin to x : | } }");
		List<String> names = offered.stream().map(CompletionItem::getLabel).toList();
		assertTrue(names.contains("depth"), names.toString());
		assertTrue(!names.contains("lockDisplay") && !names.contains("odd"), names.toString());
		assertEquals("Depth transducer, 3 LEN, screw male", detail(offered, "depth"));
	}

	@Test
	void aPartIsFoundByItsTitleToo() throws Exception {
		assertTrue(labels(BEFORE + BACKBONE + "\t\tdrop bow.1 via 1 m of thin to x : Transd| } }").contains("depth"));
	}

	@Test
	void onlyFreePortsAreOffered() throws Exception {
		assertEquals(List.of("2"), labels(BEFORE + BACKBONE + "\t\tdrop bow.1 to x : depth\n\t\tdrop bow.| } }"));
		List<CompletionItem> some = offered(BEFORE + BACKBONE + "\t\tdrop bow.1 to x : depth when radar\n\t\tdrop bow.| } }");
		assertEquals(List.of("1", "2"), some.stream().map(CompletionItem::getLabel).toList());
		assertEquals("screw female, taken when radar", detail(some, "1"));
	}

	@Test
	void aNumberTakesItsUnits() throws Exception {
		List<String> lengths = labels(BEFORE + "\t\tbackbone of thin { terminator a : plug cable 5 | } } }");
		assertTrue(lengths.containsAll(List.of("m", "cm", "ft", "in")), lengths.toString());
		assertTrue(!lengths.contains("V") && !lengths.contains("ohm"), lengths.toString());
		assertEquals("m", lengths.get(0));
	}

	@Test
	void messagesAreFoundByNumberAndByTitle() throws Exception {
		String device = KIT.replace("load 1 LEN }", "load 1 LEN; sends 128| }");
		int bar = device.indexOf('|');
		String text = device.replace("|", "");
		try (ServedProject project = new ServedProject(folder, Map.of("kit.hull", text))) {
			project.open("kit.hull", text);
			List<CompletionItem> items = answer(project.server.getTextDocumentService().completion(
					new CompletionParams(project.identifier("kit.hull"), Places.range(text, bar, 0).getStart()))).map(list -> list, list -> list.getItems());
			// the number and the name are those of the table of PGNs that standard:messages names as its source
			assertEquals("Depth", detail(items, "128267"));
			assertTrue(items.stream().noneMatch(item -> item.getLabel().equals("127250")), "127250 does not begin with 128");
		}
	}

	@Test
	void placesAndOptionsStandWhereTheyBelong() throws Exception {
		List<String> places = labels(BEFORE + BACKBONE + "\t\tdrop bow.1 to x : depth at | } }");
		assertTrue(places.containsAll(List.of("helm", "mast")) && !places.contains("radar"), places.toString());
		List<String> options = labels(BEFORE + BACKBONE + "\t\tdrop bow.1 to x : depth when | } }");
		assertTrue(options.contains("radar") && !options.contains("helm"), options.toString());
	}

	@Test
	void wholeStatementsAreOfferedWhereTheyCanStand() throws Exception {
		List<CompletionItem> items = offered(BEFORE + BACKBONE + "\t\tdr| } }");
		CompletionItem drop = items.stream().filter(item -> "A drop with its device".equals(item.getDetail())).findFirst().orElseThrow();
		assertEquals("drop tee.1 via 2 m of light to name : device at helm", drop.getTextEdit().getLeft().getNewText(),
				"without the places to fill in, since this client did not say that it knows them");
		assertTrue(items.stream().noneMatch(item -> "A boat that is sold".equals(item.getDetail())), "a hull is no part of a network");
	}
}
