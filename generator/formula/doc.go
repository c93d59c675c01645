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
// Statistics come from gonum/stat and gonum/stat/distuv, which only this room imports. What was read nowhere stands in no rule: it
// is refused, and named in testdata/published/formula/gaps.csv. A number that may be worked out and is still not to be believed has a Doubt.
//
// The table. A test holds it to the code.
//
//	Quantity                         Formula                         Function                Source
//	torque                           M = F·r                         Torque                  definition
//	moment of the lower leg          0.061·m·g·0.606·l               LimbMoment              Winter 2009, after Dempster
//	gravity at the angle of a test   G = m·g·r·cos θ                 GravityAt               moment of a weight
//	straightening, corrected         T + G                           ExtensionCorrected      sum of moments; Nelson & Duncan 1983
//	bending, corrected               T − G                           FlexionCorrected        sum of moments; Nelson & Duncan 1983
//	torque per kilogram              M/m                             PerKilogram             definition; Gokeler 2017
//	symmetry, higher is better       100·involved/other              Symmetry                Gokeler 2017
//	symmetry, lower is better        100·other/involved              SymmetryTimed           Noyes 1991, from memory
//	deficit                          100 − LSI                       Deficit                 definition
//	percentage difference            LSI − 100                       PercentDifference       definition
//	share of the other leg before    100·now/before                  PreopRatio              Wellsandt 2017
//	hamstrings to quadriceps         100·H/Q                         HamstringsToQuadriceps  definition; Gokeler 2017
//	best trial                       max x                           Best                    Kim 2014
//	quickest trial                   min x                           Quickest                common practice
//	mean of the trials               Σx/n                            MeanOf                  definition; Reid 2007, from memory
//	standard deviation               √(Σ(x − x̄)²/(n − 1))           SampleSD                definition
//	spread of the trials             100·s/x̄                        Spread                  definition
//	repetitions to failure           n = r + q                       ToFailure               Zourdos 2016
//	estimated maximum                1RM = w·(1 + n/30)              OneRM                   Epley 1985, second-hand
//	share that repetitions allow     100/(1 + n/30)                  AllowedShare            Epley 1985, second-hand
//	working load                     1RM·share/100                   WorkingLoad             share of the maximum
//	true share of the maximum        100·w/1RM                       TrueShare               definition
//	repetitions a load allows        n = 30·(1RM/w − 1)              ImpliedToFailure        Epley 1985, second-hand
//	implied reserve                  q = n − r                       ImpliedReserve          Zourdos 2016
//	ceiling of a later week          w·(1 + p/100)^k                 Ceiling                 ACSM 2009
//	moved load                       plates + carriage               MovedLoad               sum of masses
//	what is put on                   moved − carriage                PutOn                   difference of masses
//	load on a cable                  stack/ratio                     Felt                    mechanics of a pulley
//	what is pinned on a cable        felt·ratio                      Pinned                  mechanics of a pulley
//	torque of a slanting pull        M = F·r·cos φ                   TorqueOff               definition
//	force at another arm             F = M/r                         ForceAtArm              definition
//	moment of the lower leg, by sex  m·g·(s·c·l + f·(l + 0.04))      LimbMomentByDeLeva      de Leva 1996
//	moment of the weighed leg        W·L/cos θ                       LimbMomentWeighed       moment of a weight
//	gravity of the weighed leg       G = W·L·cos θ/cos θw            GravityFromWeighed      moment of a weight
//	worse to better leg              100·min/max                     WorseToBetter           Markström 2022
//	change since the test before     100·(now − before)/before       PercentChange           definition
//	hop as a share of height         100·distance/height             HopForHeight            IJSPT 2021
//	lowest of the hop battery        min LSI                         HopBattery              Grindem 2016
//	Y-balance composite              100·(ANT + PM + PL)/(3·leg)     YBalance                Plisky 2006, second-hand
//	difference between the legs      max − min                       ReachDifference         definition
//	single-leg rise                  100 − seat in cm                RiseScore               table in BJSM
//	standard error of measurement    SD·√(1 − ICC)                   SEM                     definition
//	smallest real change             z·√2·SEM                        MDC                     definition; Reid 2007
//	smallest real change, 90 %       1.645·√2·SEM                    MDC90                   definition
//	smallest real change, 95 %       1.96·√2·SEM                     MDC95                   definition; Kambič 2020
//	low end of one score             x − 1.96·SEM                    BandLow                 definition
//	high end of one score            x + 1.96·SEM                    BandHigh                definition
//	so many of so many               100·k/n                         Proportion              definition
//	IKDC                             100·Σ/87                        IKDC                    form of 2000, from memory
//	IKDC of a raw sum                100·(raw − 18)/87               IKDCFromRaw             form of 2000, from memory
//	Pedi-IKDC                        100·Σ/92                        PediIKDC                scoring instructions
//	KOOS pain                        100 − 25·mean                   KOOSPain                rule of 2012
//	KOOS symptoms                    100 − 25·mean                   KOOSSymptoms            rule of 2012
//	KOOS daily living                100 − 25·mean                   KOOSADL                 rule of 2012
//	KOOS sport and recreation        100 − 25·mean                   KOOSSport               rule of 2012
//	KOOS quality of life             100 − 25·mean                   KOOSQOL                 rule of 2012
//	KOS-ADLS                         100·Σ/70                        KOSADLS                 scoring of the scale
//	ACL-RSI                          mean of 12                      ACLRSI                  second-hand
//	ACL-RSI, short form              mean of 6                       ACLRSIShort             second-hand
//	LEFS                             Σ of 20                         LEFS                    Binkley 1999
//	LEFS in hundredths               100·score/80                    LEFSPercent             definition
//	TSK-11                           Σ of 11                         TSK11                   second-hand
//	Tegner                           one level                       Tegner                  the scale
//	maximum by an equation           seven equations                 OneRMBy                 see Equation
//	share by an equation             turned round                    AllowedShareBy          see Equation
//	repetitions by an equation       turned round                    ImpliedToFailureBy      see Equation
//	share read off a chart           a row of a table                ShareByChart            reprints, second-hand
//	maximum of the leg press         1.0970·5RM + 14.2546            ReynoldsLegPress        Reynolds 2006
//	low end of an estimate           0.9·1RM                         EstimateLow             after Hutchins 2010
//	high end of an estimate          1.1·1RM                         EstimateHigh            after Hutchins 2010
//	reserve of a rating, at least    10 − RPE                        ReserveOfRPE            Zourdos 2016
//	reserve of a rating, at most     10 − RPE                        MostReserveOfRPE        Zourdos 2016
//	change of load for a rating      a row of a table                StepOfRPE               J Hum Kinet 2024
//	maximum from a logged set        w·(1 + (r + q)/30)              BackEstimate            Epley 1985, second-hand
//	load for other repetitions       w·(1 + n/30)/(1 + n₂/30)        NextLoad                Epley 1985, second-hand
//	repetitions that earn a load     30·[(w₂/w)·(1 + n/30) − 1]      RepsNeeded              Epley 1985, second-hand
//	two more in two sessions         yes or no                       TwoForTwo               Graves & Baechle
//	share of one step                100·step/load                   SensibleStep            ACSM 2009
//	lightest load for a step         100·step/most                   LeastForStep            ACSM 2009
//	DAPRE, a set                     50, 75, 100 %                   DAPRESet                Knight 1979, second-hand
//	DAPRE, set 4                     a row of a table                DAPREFourth             Knight 1979, second-hand
//	DAPRE, next session              a row of a table                DAPRENext               Knight 1979, second-hand
//	APRE, a set                      50, 75, 100 %                   APRESet                 Mann 2010, second-hand
//	APRE, adjusted load              a row of a table                APREAdjusted            Mann 2010, second-hand
//	DeLorme, a set                   50, 75, 100 %                   DeLorme                 DeLorme 1948, second-hand
//	Oxford, a set                    100, 75, 50 %                   Oxford                  Zinovieff 1951, second-hand
//	each side of the bar             (load − bar)/2                  ASide                   definition
//	plates of one side               heaviest first                  Plates                  definition
//	force along a slope              m·g·sin θ                       AngledPress             mechanics
//	mass for a force along a slope   F/(g·sin θ)                     AngledMass              mechanics
//	force at the pad of a lever      m·g·cam/pad                     LeverMachine            mechanics
//	moment of an ankle weight        m·g·L·cos φ                     AnkleWeight             mechanics
//	ankle weight for a moment        M/(g·L·cos φ)                   AnkleMass               mechanics
//	moment of the own leg            (s·c + f)·m·g·l·cos φ           OwnShank                Plagenhoef 1983
//	share of the body                1 − what stays                  BodyShare               Plagenhoef 1983; Cormie 2007
//	moved with the body              share·mass + added              EffectiveLoad           sum of masses
//	added to the body                effective − share·mass          AddedLoad               difference of masses
//	stretch of a band                100·(L − L₀)/L₀                 Stretch                 definition
//	force of a band                  line of two points              Elastic                 measured points
//	stretch for a force              line of two points              StretchFor              measured points
//	maximum from an isometric test   0.714 + 0.783·F in kgf          MaximumFromIsometric    Kanada 2017
//	lowest of it                     1RM − 20.1                      IsometricLow            Lesnak 2020
//	highest of it                    1RM + 15.6                      IsometricHigh           Lesnak 2020
//	load to start with               share of it                     StartFromIsometric      Kanada 2017
//	target of a hold                 best·share/100                  HoldTarget              share of the best
//	time of work and rest            n·work + (n − 1)·rest           IntervalTime            definition
//	pressure of the cuff             LOP·share/100                   CuffPressure            Patterson 2019, second-hand
//	load under the cuff              1RM·share/100                   CuffLoad                Patterson 2019, second-hand
//	time under the cuff              n·s + rests·rest                CuffTime                definition
//	time of stimulation              n·(on + off)                    StimulationTime         Nussbaum 2017
//	tonnage                          Σ load·repetitions              Tonnage                 definition
//	session load                     rating·minutes                  SessionLoad             Foster 2001
//	load of the week                 Σ of 7 days                     WeekLoad                Foster 1998
//	monotony                         mean/SD, n − 1                  Monotony                Foster 1998
//	monotony, SD with n              mean/SD, n                      MonotonyOfPopulation    Foster 1998
//	strain                           week·monotony                   Strain                  Foster 1998
//	straight line                    least squares                   StraightLine            gonum; NIST Norris
//	log-time line                    least squares on ln(week)       LogTime                 gonum
//	resistant line                   median of slopes                TheilSen                Sen 1968
//	Student's t                      quantile                        StudentT                gonum
//	margin of one new test           t·s·√(1 + 1/n + (x − x̄)²/Sxx)  PredictionMargin        gonum; R cars
//	relative rate, rule of thumb     1 + 0.03·d                      RelativeRateLinear      Grindem 2016, from memory
//	relative rate                    (1/0.97)^d                      RelativeRate            Grindem 2016, from memory
//	relative rate, low end           (1/0.99)^d                      RelativeRateLow         Grindem 2016, from memory
//	relative rate, high end          (1/0.94)^d                      RelativeRateHigh        Grindem 2016, from memory
//	relative rate by month           0.49^−k                         RelativeRateByMonth     Grindem 2016
package formula
