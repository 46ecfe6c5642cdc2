/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.part;

/**
 * What every part of a catalog has.
 *
 * @param catalog the name of the catalog
 * @param name the name within the catalog
 * @param title what people call it, empty if the name says enough
 * @param article the article number, empty if none is given
 * @param source where its values were read, empty if the catalog does not say
 */
public record PartIdentity(String catalog, String name, String title, String article, String source) {
}
