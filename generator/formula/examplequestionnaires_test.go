package formula_test

import (
	"paceleaf/generator/formula"
)

// A sum of 45; then with two items left out.
func ExampleIKDC_byHand() {
	v, err := formula.IKDC(formula.Items{formula.Answered(2), formula.Answered(5), formula.Answered(5), formula.Answered(2), formula.Answered(2), formula.Answered(1), formula.Answered(2), formula.Answered(2), formula.Answered(2), formula.Answered(2), formula.Answered(2), formula.Answered(2), formula.Answered(2), formula.Answered(2), formula.Answered(2), formula.Answered(3), formula.Answered(2), formula.Answered(5)})
	show(2, v, err)
	v, err = formula.IKDC(formula.Items{formula.Answered(2), {}, formula.Answered(5), formula.Answered(2), formula.Answered(2), formula.Answered(1), formula.Answered(2), formula.Answered(2), formula.Answered(2), formula.Answered(2), formula.Answered(2), formula.Answered(2), formula.Answered(2), formula.Answered(2), formula.Answered(2), formula.Answered(3), {}, formula.Answered(5)})
	show(2, v, err)
	// Output:
	// 51.72
	// 52.05
}

func ExampleIKDCFromRaw_byHand() {
	v, err := formula.IKDCFromRaw(60)
	show(1, v, err)
	v, err = formula.IKDCFromRaw(17)
	show(1, v, err)
	// Output:
	// 48.3
	// a raw IKDC sum lies between 18 and 105: no score
}

// Printed 65.2.
func ExamplePediIKDC_scoringInstructions() {
	v, err := formula.PediIKDC(60)
	show(1, v, err)
	// Output: 65.2
}

// Two of nine may be missing, five may not.
func ExampleKOOSPain_byHand() {
	v, err := formula.KOOSPain(formula.Items{formula.Answered(1), formula.Answered(0), formula.Answered(2), formula.Answered(1), formula.Answered(1), formula.Answered(0), formula.Answered(1), formula.Answered(0), formula.Answered(1)})
	show(2, v, err)
	v, err = formula.KOOSPain(formula.Items{formula.Answered(1), formula.Answered(0), formula.Answered(2), {}, formula.Answered(1), {}, formula.Answered(1), formula.Answered(0), formula.Answered(1)})
	show(2, v, err)
	v, err = formula.KOOSPain(formula.Items{formula.Answered(1), formula.Answered(0), formula.Answered(2), {}, formula.Answered(1), {}, {}, {}, {}})
	show(2, v, err)
	// Output:
	// 80.56
	// 78.57
	// the KOOS pain: 4 of 9 items answered, at least 5 are needed: no score
}

func ExampleKOOSSymptoms_byHand() {
	v, err := formula.KOOSSymptoms(formula.Items{formula.Answered(1), formula.Answered(1), formula.Answered(2), formula.Answered(0), formula.Answered(1), formula.Answered(1), formula.Answered(1)})
	show(0, v, err)
	// Output: 75
}

func ExampleKOOSADL_byHand() {
	v, err := formula.KOOSADL(formula.Items{formula.Answered(1), formula.Answered(1), formula.Answered(1), formula.Answered(1), formula.Answered(1), formula.Answered(1), formula.Answered(1), formula.Answered(1), formula.Answered(1), formula.Answered(1), formula.Answered(1), formula.Answered(1), formula.Answered(1), formula.Answered(1), formula.Answered(1), formula.Answered(1), formula.Answered(1)})
	show(0, v, err)
	// Output: 75
}

func ExampleKOOSSport_byHand() {
	v, err := formula.KOOSSport(formula.Items{formula.Answered(2), formula.Answered(3), formula.Answered(1), formula.Answered(2), formula.Answered(2)})
	show(0, v, err)
	// Output: 50
}

func ExampleKOOSQOL_byHand() {
	v, err := formula.KOOSQOL(formula.Items{formula.Answered(1), formula.Answered(2), formula.Answered(2), formula.Answered(3)})
	show(0, v, err)
	// Output: 50
}

func ExampleKOSADLS_byHand() {
	v, err := formula.KOSADLS(formula.Items{formula.Answered(5), formula.Answered(5), formula.Answered(5), formula.Answered(4), formula.Answered(4), formula.Answered(4), formula.Answered(4), formula.Answered(4), formula.Answered(4), formula.Answered(4), formula.Answered(4), formula.Answered(4), formula.Answered(5), formula.Answered(5)})
	show(2, v, err)
	// Output: 87.14
}

func ExampleACLRSI_byHand() {
	v, err := formula.ACLRSI(formula.Items{formula.Answered(70), formula.Answered(60), formula.Answered(80), formula.Answered(50), formula.Answered(60), formula.Answered(70), formula.Answered(80), formula.Answered(90), formula.Answered(60), formula.Answered(50), formula.Answered(70), formula.Answered(60)})
	show(2, v, err)
	// Output: 66.67
}

func ExampleACLRSIShort_byHand() {
	v, err := formula.ACLRSIShort(formula.Items{formula.Answered(70), formula.Answered(60), formula.Answered(50), formula.Answered(60), formula.Answered(80), formula.Answered(70)})
	show(1, v, err)
	// Output: 65.0
}

func ExampleLEFS_byHand() {
	v, err := formula.LEFS(formula.Items{formula.Answered(4), formula.Answered(3), formula.Answered(3), formula.Answered(3), formula.Answered(3), formula.Answered(3), formula.Answered(3), formula.Answered(3), formula.Answered(3), formula.Answered(3), formula.Answered(3), formula.Answered(3), formula.Answered(3), formula.Answered(3), formula.Answered(3), formula.Answered(4), formula.Answered(3), formula.Answered(3), formula.Answered(3), formula.Answered(3)})
	show(0, v, err)
	// Output: 62
}

func ExampleLEFSPercent_byHand() {
	v, err := formula.LEFSPercent(62)
	show(1, v, err)
	// Output: 77.5 %
}

func ExampleTSK11_byHand() {
	v, err := formula.TSK11(formula.Items{formula.Answered(2), formula.Answered(2), formula.Answered(1), formula.Answered(2), formula.Answered(1), formula.Answered(2), formula.Answered(2), formula.Answered(1), formula.Answered(2), formula.Answered(2), formula.Answered(2)})
	show(0, v, err)
	// Output: 19
}

func ExampleTegner_byHand() {
	v, err := formula.Tegner(formula.Items{formula.Answered(6)})
	show(0, v, err)
	// Output: 6
}
