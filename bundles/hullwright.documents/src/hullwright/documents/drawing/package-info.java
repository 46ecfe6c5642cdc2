/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * The network laid over the boat: places bow to stern and deck above deck, in them the backbone with its parts in order, the drops
 * and devices, supplies, serial lines and radio links, with what is left of each limit and with the findings.
 *
 * <p>The arrangement is our own and not that of a general layout library: a boat says where things are, and a drawing that is redone
 * with every key must not jump. What is added on board moves what lies beside it and nothing else.
 */
package hullwright.documents.drawing;
