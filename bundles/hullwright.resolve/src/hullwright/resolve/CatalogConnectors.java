/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import hullwright.network.part.Connector;
import hullwright.network.part.ConnectorFamily;
import hullwright.network.part.Ends;
import hullwright.network.part.Gender;
import hullwright.spec.End;
import hullwright.spec.Family;
import hullwright.spec.FamilyKind;

/**
 * Copies connector families from catalogs into records, each once, and the connectors of parts with them.
 */
final class CatalogConnectors {

	private final Map<Family, ConnectorFamily> families = new IdentityHashMap<>();

	/** The first two ends of a part, as far as the text says which family they are of. */
	Ends ends(List<End> ends) {
		return new Ends(ends.isEmpty() ? Optional.empty() : connector(ends.get(0)), ends.size() < 2 ? Optional.empty() : connector(ends.get(1)));
	}

	/** The connector at an end, or empty if the end is bare or the text does not say which family it is of. */
	Optional<Connector> connector(End end) {
		if (end == null || end.getFamily() == null || end.getFamily().eIsProxy()) {
			return Optional.empty();
		}
		Gender gender = end.getGender() == hullwright.spec.Gender.MALE ? Gender.MALE : Gender.FEMALE;
		return Optional.of(new Connector(families.computeIfAbsent(end.getFamily(), CatalogConnectors::copy), gender));
	}

	private static ConnectorFamily copy(Family family) {
		return new ConnectorFamily(family.getName(), Copying.text(family.getTitle()), family.getKind() == FamilyKind.STANDARD,
				Optional.ofNullable(family.getRated()), Optional.ofNullable(family.getContact()));
	}
}
