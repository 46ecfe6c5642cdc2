/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.edit;

/**
 * One change that a fix wants made to the text. The language renders it and keeps all that stands around it.
 */
public sealed interface EditIntent permits AddCap, AddDrop, AddFeed, AddToBackbone, InsertInBackbone, InsertInDrop, MoveInBackbone, PlugInto, Remove,
		ReplacePart, ReplaceText, Reword, SetLength, SetProperty, SetRate {
}
