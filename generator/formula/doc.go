// Package formula holds every published quantity that Paceleaf reckons, one a file, in the letters of its source.
// It rounds nothing, formats nothing, reads no file and no clock, and refuses where its source did not study.
//
// Beside each function stands its rule, named By and the function, whose Sum gives the same result on a pocket
// calculator. Where a function is called it is wrapped, so that the number keeps its basis:
//
//	force, arm := test.Peak, test.Arm
//	torque := basis.Of2("knee-extension.left.torque", formula.ByTorque, formula.Torque, force, arm)
//	lsi := basis.Try2("knee-extension.lsi", formula.BySymmetry, formula.Symmetry, involved, other)
//
// Every product stands inside a conversion, so that no processor fuses it with the sum that follows.
//
// The table. A test holds it to the code.
//
//	Quantity                          Formula                   Function                Source
//	torque                            M = F·r                   Torque                  definition
//	moment of the lower leg           0.061·m·g·0.606·l         LimbMoment              Winter 2009, after Dempster
//	gravity at the angle of a test    G = m·g·r·cos θ           GravityAt               moment of a weight
//	straightening, corrected          T + G                     ExtensionCorrected      sum of moments; Nelson & Duncan 1983
//	bending, corrected                T − G                     FlexionCorrected        sum of moments; Nelson & Duncan 1983
//	torque per kilogram               M/m                       PerKilogram             definition; Gokeler 2017
//	symmetry, higher is better        100·involved/other        Symmetry                Gokeler 2017
//	symmetry, lower is better         100·other/involved        SymmetryTimed           Noyes 1991, from memory
//	deficit                           100 − LSI                 Deficit                 definition
//	percentage difference             LSI − 100                 PercentDifference       definition
//	share of the other leg before     100·now/before            PreopRatio              Wellsandt 2017
//	hamstrings to quadriceps          100·H/Q                   HamstringsToQuadriceps  definition; Gokeler 2017
//	best trial                        max x                     Best                    Kim 2014
//	quickest trial                    min x                     Quickest                common practice
//	mean of the trials                Σx/n                      MeanOf                  definition; Reid 2007, from memory
//	standard deviation                √(Σ(x − x̄)²/(n − 1))      SampleSD                definition
//	spread of the trials              100·s/x̄                   Spread                  definition
//	repetitions to failure            n = r + q                 ToFailure               Zourdos 2016
//	estimated maximum                 1RM = w·(1 + n/30)        OneRM                   Epley 1985, second-hand
//	share that repetitions allow      100/(1 + n/30)            AllowedShare            Epley 1985, second-hand
//	working load                      1RM·share/100             WorkingLoad             share of the maximum
//	true share of the maximum         100·w/1RM                 TrueShare               definition
//	repetitions a load allows         n = 30·(1RM/w − 1)        ImpliedToFailure        Epley 1985, second-hand
//	implied reserve                   q = n − r                 ImpliedReserve          Zourdos 2016
//	ceiling of a later week           w·(1 + p/100)^k           Ceiling                 ACSM 2009
//	moved load                        plates + carriage         MovedLoad               sum of masses
//	what is put on                    moved − carriage          PutOn                   difference of masses
//	load on a cable                   stack/ratio               Felt                    mechanics of a pulley
//	what is pinned on a cable         felt·ratio                Pinned                  mechanics of a pulley
package formula
