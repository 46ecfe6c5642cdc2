/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.network.Origin;
import hullwright.network.part.Part;

/**
 * A part as its catalog describes it, for somebody who looks for one.
 *
 * @param catalog the name of its catalog
 * @param file the file of the catalog, relative to the project, or its name as an import writes it: {@code standard:parts}
 * @param builtIn whether the catalog ships with the program
 * @param part the part
 * @param origin its place in the text of the catalog
 */
public record OfferedPart(String catalog, String file, boolean builtIn, Part part, Origin origin) {
}
