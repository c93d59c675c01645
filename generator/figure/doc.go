// Package figure draws exercises from joint angles, as SVG: nothing in a picture is drawn by hand, so that a limit of the
// knee moves the leg, the wedge and the digits together.
//
// A [Pose] is the [figure] table of an exercise. [Draw] makes the picture, [Ends] tells which bend it begins and ends at,
// [Judge] finds what is wrong with a pose, and [Style] is the style sheet that a page holds once.
//
// Lengths are hundredths of stature; y is up and the person faces +x. Angles are degrees. A direction is measured from
// straight down, forward positive: 0 is down, 90 forward, 180 up. Pose numbers are our own drawing values unless a source
// stands beside them. The working leg is the near one. A left leg is mirrored geometry; text is never mirrored.
package figure
