package calculator

import (
	"math"
	"testing"
)

// The calculator is itself tried with the keys that no shipped page shows yet.
func TestCalculatorKeys(t *testing.T) {
	for sum, want := range map[string]float64{
		"1.96 × sqrt(2) × 3.49 %":                                                               1.96 * math.Sqrt2 * 3.49,
		"max(1, −ln((100 × 40 kg ÷ 80 kg − 48.8) ÷ 53.8) ÷ 0.075)":                              -math.Log(1.2/53.8) / 0.075,
		"sum(1, 2, 3) + exp(ln(2))":                                                             8,
		"slope(12 weeks, 58 %, 16 weeks, 66 %, 20 weeks, 71 %)":                                 1.625,
		"intercept(12, 58, 16, 66, 20, 71, 24, 77, 28, 81)":                                     42.1,
		"slopemedian(1, 9, 2, 15, 3, 19, 4, 20, 10, 45, 12, 55, 18, 78)":                        4,
		"interceptmedian(1, 9, 2, 15, 3, 19, 4, 20, 10, 45, 12, 55, 18, 78)":                    4,
		"interceptln(1, 7, 2.718281828459045, 8)":                                               7,
		"100 × 40 kg ÷ (48.8 + 53.8 × exp(−0.075 × 8))":                                         4000 / (48.8 + 53.8*math.Exp(-0.6)),
		"slope(12 weeks, 58 %, 16 weeks, 66 %, 20 weeks, 71 %, 24 weeks, 77 %, 28 weeks, 81 %)": 1.425,
	} {
		if got, err := Work(sum); err != nil || math.Abs(got-want) > 1e-9 {
			t.Errorf("%s = %v, %v; wanted %v", sum, got, err, want)
		}
	}
	if v, err := Work("log(2)"); err == nil {
		t.Errorf("log(2) gives %v; wanted an error", v)
	}
	if got, err := Work("exp((90 − interceptln(12, 58, 16, 66, 20, 71, 24, 77, 28, 81)) ÷ slopeln(12, 58, 16, 66, 20, 71, 24, 77, 28, 81))"); err != nil || math.Abs(got-39.218) > 5e-4 {
		t.Errorf("log-time comes to 90 in week %v, %v; wanted 39.218", got, err)
	}
}
