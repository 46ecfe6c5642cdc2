/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.spec.Catalog;
import hullwright.spec.DeviceType;
import hullwright.spec.Named;
import hullwright.spec.PartType;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What holds for every part of the standard catalogs, whatever its kind. */
class StandardCatalogTest {

	@Test
	void everyPartAndFamilySaysWhereItsFiguresComeFrom() {
		Set<String> silent = Stream.concat(
				StandardParts.all(PartType.class).stream().filter(part -> part.getSource() == null),
				StandardParts.PARTS.getFamilies().stream().filter(family -> family.getSource() == null))
				.map(Named::getName)
				.collect(Collectors.toSet());
		assertEquals(Set.of(), silent);
	}

	@Test
	void everyPartAndFamilyHasATitleOfItsOwn() {
		List<String> titles = Stream.concat(StandardParts.all(PartType.class).stream().map(PartType::getTitle),
				StandardParts.PARTS.getFamilies().stream().map(family -> family.getTitle())).toList();
		assertTrue(titles.stream().noneMatch(title -> title == null || title.isBlank()));
		assertEquals(List.of(), titles.stream().filter(title -> titles.indexOf(title) != titles.lastIndexOf(title)).toList());
	}

	/** Whoever imports both need not write catalogs before names. */
	@Test
	void theCatalogsShareNoName() {
		List<String> names = StandardParts.all(PartType.class).stream().map(Named::getName).toList();
		assertEquals(List.of(), names.stream().filter(name -> names.indexOf(name) != names.lastIndexOf(name)).toList());
	}

	@Test
	void offersEnoughForWholeBoats() {
		long hardware = StandardParts.all(PartType.class).stream().filter(part -> !(part instanceof DeviceType)).count();
		assertTrue(hardware >= 60, hardware + " pieces of hardware");
		assertTrue(StandardParts.busDevices().size() >= 30, StandardParts.busDevices().size() + " devices on the bus");
		assertTrue(StandardParts.serialUnits().size() >= 10, StandardParts.serialUnits().size() + " units with serial lines");
	}

	@Test
	void noTwoPartsAreTheSameUnderOtherNames() {
		assertEquals(List.of(), sameUnderOtherNames(StandardParts.all(PartType.class)));
	}

	@Test
	void aCopyUnderAnotherNameWouldBeFound() {
		Catalog catalog = (Catalog) HullTexts.spec(new HullTexts().read("""
				catalog Two {
					family f { standard }
					device a "One" { port bus : f male; load 1 LEN; source "x" }
					device b "Another" { port net : f male; load 1 LEN; source "y" }
					device c "A third" { port bus : f male; load 2 LEN; source "x" }
				}
				""")).getDeclarations().get(0);
		assertEquals(List.of(List.of("a", "b")), sameUnderOtherNames(catalog.getParts()));
	}

	private static List<List<String>> sameUnderOtherNames(List<PartType> parts) {
		return parts.stream().collect(Collectors.groupingBy(PartSignature::of)).values().stream()
				.filter(same -> same.size() > 1)
				.map(same -> same.stream().map(Named::getName).toList())
				.toList();
	}
}
