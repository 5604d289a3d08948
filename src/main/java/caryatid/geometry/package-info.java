/**
 * Points, planes, sides and the person's frame: x to the person's right, y anterior, z up, in
 * millimetres, origin where the clinician measures from, at the plate's top surface. Uses remark
 * only.
 */
package caryatid.geometry;
