package published

import "followingsea.example/internal/reference"

var rideSources = []reference.Source{
	{Key: "LonguetHiggins1983", Citation: "Longuet-Higgins, M. S. (1983). On the joint distribution of wave periods and amplitudes in a random wave field. Proceedings of the Royal Society A 389, 241-258", ID: "doi:10.1098/rspa.1983.0107"},
	{Key: "Kimura1980", Citation: "Kimura, A. (1980). Statistical properties of random wave groups. Proceedings of the 17th International Conference on Coastal Engineering, Sydney, 2955-2973"},
	{Key: "Tricomi1933", Citation: "Tricomi, F. (1933). Integrazione di un'equazione differenziale presentatasi in elettrotecnica. Annali della Scuola Normale Superiore di Pisa 2, 1-20"},
	{Key: "GuckenheimerHolmes1983", Citation: "Guckenheimer, J. and Holmes, P. (1983). Nonlinear Oscillations, Dynamical Systems, and Bifurcations of Vector Fields. Springer"},
	{Key: "Strogatz1994", Citation: "Strogatz, S. H. (1994). Nonlinear Dynamics and Chaos. Addison-Wesley"},
	{Key: "MSC-1228", Citation: "International Maritime Organization (2007). Revised guidance to the master for avoiding dangerous situations in adverse weather and sea conditions. MSC.1/Circ.1228", ID: "MSC.1/Circ.1228"},
	{Key: "Schram2017", Citation: "Schram, B. L., Hing, W. A., Climstein, M. and Furness, J. W. (2017). A performance analysis of a stand-up paddle board marathon race. Journal of Strength and Conditioning Research 31 (6), 1552-1556"},
	{Key: "HSC-1329", Citation: "International Maritime Organization (2009). Guidelines for uniform operating limitations of high-speed craft. MSC.1/Circ.1329, 11 June 2009", ID: "MSC.1/Circ.1329"},
	{Key: "StoleHentschel2019", Citation: "Stole-Hentschel, S., Trulsen, K. and Olluri, S. (2019). Preprint on the statistics of crossing wave systems", ID: "arXiv:1904.07207"},
	{Key: "MSC-1627", Citation: "International Maritime Organization (2020). Interim guidelines on the second generation intact stability criteria. MSC.1/Circ.1627", ID: "MSC.1/Circ.1627"},
	{Key: "MSC-707", Citation: "International Maritime Organization (1995). Guidance to the master for avoiding dangerous situations in following and quartering seas. MSC/Circ.707, 19 October 1995", ID: "MSC/Circ.707"},
	{Key: "StarAdvertiser2018", Citation: "Honolulu Star-Advertiser (28 May 2018). Race results of a 52 km downwind channel crossing"},
	{Key: "ICF2019", Citation: "International Canoe Federation (2019). News of the stand-up paddling world championships at Qingdao: 200 m sprint"},
}
